package org.proviso.files.election;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Contest;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctPart;
import org.proviso.core.StreetSegment;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideCount;
import org.proviso.files.csv.NumberedRows;
import org.proviso.files.roll.RollReader;
import org.proviso.files.roll.VriRollReader;

/** Reads the files of an election folder in an order in which each can be checked against those before it. */
final class FolderReader {

    private final Path folder;
    private final LongConsumer progress;
    private final @Nullable SetAsideCount aside;
    private final List<String> warnings = new ArrayList<>();

    FolderReader(Path folder, LongConsumer progress, @Nullable SetAside aside) {
        this.folder = folder;
        this.progress = progress;
        this.aside = aside == null ? null : new SetAsideCount(aside);
    }

    ElectionFolder read() {
        if (!Files.isDirectory(folder)) {
            throw new InputException(folder.toString(), 0, "", "is not a folder");
        }
        Election election = ElectionYamlReader.read(file("election.yaml"));
        NumberedRows<Contest> contests = ContestReader.read(file("contests.csv"), warnings::add);
        NumberedRows<BallotStyleReader.StyleContest> lines =
                BallotStyleReader.read(file("ballot-styles.csv"), warnings::add);
        List<BallotStyle> styles = BallotStyleReader.styles(lines);
        NumberedRows<PrecinctPart> precincts = PrecinctReader.read(file("precincts.csv"), warnings::add);
        NumberedRows<StreetSegment> streets = streets(FolderChecks.parts(precincts));
        FolderChecks checks = new FolderChecks(folder, warnings);
        checks.ballots(contests, lines, styles, precincts, streets);
        Map<VoterId, Voter> voters = voters();
        checks.roll(voters.values(), precincts);
        NumberedRows<MailBallot> mailBallots = MailBallotReader.read(file("mail-ballots.csv"), warnings::add, aside);
        NumberedRows<CheckIn> checkIns = CheckInReader.read(file("check-ins.csv"), warnings::add, aside);
        checks.voters(mailBallots, MailBallot::voterId, voters);
        checks.voters(checkIns, CheckIn::voterId, voters);
        List<VotedElsewhere> votedElsewhere = votedElsewhere();
        var transmittals = TransmittalReader.read(file("transmittals.csv"), warnings::add);
        NumberedRows<Envelope> envelopes = EnvelopeReader.read(file("envelopes.csv"), warnings::add);
        checks.envelopes(envelopes, styles, election);
        return new ElectionFolder(
                folder,
                election,
                contests.values(),
                styles,
                precincts.values(),
                streets.values(),
                voters,
                byVoter(mailBallots.values(), MailBallot::voterId),
                byVoter(checkIns.values(), CheckIn::voterId),
                votedElsewhere,
                transmittals.values(),
                envelopes.values(),
                List.copyOf(warnings),
                aside == null ? Map.of() : aside.counts());
    }

    /** The roll is one file: CSV, or the JSON of NIST Voter Records Interchange. */
    private Map<VoterId, Voter> voters() {
        Map<VoterId, Voter> voters = new LinkedHashMap<>();
        boolean json = Files.exists(file("roll.json"));
        if (json && Files.exists(file("roll.csv"))) {
            throw new InputException("roll.json", 0, "", "found beside roll.csv; an election has only one roll");
        }
        Consumer<Voter> each = voter -> {
            voters.put(voter.voterId(), voter);
            progress.accept(voters.size());
        };
        if (json) {
            VriRollReader.read(file("roll.json"), warnings::add, aside, each);
        } else {
            RollReader.read(file("roll.csv"), warnings::add, aside, each);
        }
        return Collections.unmodifiableMap(voters);
    }

    private NumberedRows<StreetSegment> streets(Set<String> parts) {
        return StreetReader.read(
                file("streets.csv"), warnings::add, aside, street -> parts.contains(FolderChecks.part(street)));
    }

    private List<VotedElsewhere> votedElsewhere() {
        Path file = file("voted-elsewhere.csv");
        return Files.exists(file)
                ? VotedElsewhereReader.read(file, warnings::add, aside).values()
                : List.of();
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    private static <T> Map<VoterId, List<T>> byVoter(List<T> rows, Function<T, VoterId> voterId) {
        Map<VoterId, List<T>> byVoter = new LinkedHashMap<>();
        for (T row : rows) {
            byVoter.computeIfAbsent(voterId.apply(row), id -> new ArrayList<>()).add(row);
        }
        byVoter.replaceAll((id, list) -> List.copyOf(list));
        return Collections.unmodifiableMap(byVoter);
    }
}
