package org.proviso.election;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.files.ContentHash;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.packs.RulePacks;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Loads an election from its folder of files: whole or not at all, and only once. */
@Service
public class ElectionLoadService {

    private final ElectionStore elections;
    private final BallotStore ballots;
    private final StatisticsStore statistics;
    private final RulesService rules;
    private final LedgerService ledger;
    private final ActDoor door;
    private final LoadWatch watch;

    ElectionLoadService(
            ElectionStore elections,
            BallotStore ballots,
            StatisticsStore statistics,
            RulesService rules,
            LedgerService ledger,
            ActDoor door,
            LoadWatch watch) {
        this.elections = elections;
        this.ballots = ballots;
        this.statistics = statistics;
        this.rules = rules;
        this.ledger = ledger;
        this.door = door;
        this.watch = watch;
    }

    private record LoadedFolder(ElectionFolder folder, String hash, String rulesHash) {

        ElectionId id() {
            return folder.election().id();
        }
    }

    /**
     * Loads an election folder in one transaction with one entry in the ledger, the first of the election's chain. The
     * same files again are recognised and nothing is written. Refused where the election is there with other files, or
     * has a rule pack that does not come with the program; throws {@link org.proviso.files.InputException} where a file
     * is not right. The rules in force are kept with it.
     */
    @Transactional
    public ActResult<LoadResult> load(Path path) {
        ActDoor.Permitted supervisor = door.demand(Permission.LOAD_FILES);
        return watch.during(() -> load(path, supervisor));
    }

    private ActResult<LoadResult> load(Path path, ActDoor.Permitted supervisor) {
        watch.begin("The files are being looked at", 0);
        String hash = ContentHash.ofFolder(path);
        Optional<String> known = elections.withContent(hash);
        if (known.isPresent()) {
            return ActResult.accepted(new LoadResult(new ElectionId(known.get()), true));
        }
        return supervisor
                .lock(() -> ElectionFolder.read(path, watch.begin("The files are being read and checked", 0)))
                .refuse(this::isThere)
                .refuse(ElectionLoadService::packNotProved)
                .save(folder -> keep(folder, hash))
                .tell(loaded -> new ElectionLoaded(loaded.id(), loaded.folder()))
                .andThen(this::makeReady)
                .record(ElectionLoadService::line)
                .map(this::told);
    }

    private Optional<Refusal> isThere(ElectionFolder folder) {
        ElectionId id = folder.election().id();
        return Refusal.when(
                elections.find(id).isPresent(),
                Why.NUMBER_TAKEN,
                "The election " + id + " is in the office already, loaded from other files.");
    }

    private static Optional<Refusal> packNotProved(ElectionFolder folder) {
        String pack = folder.election().rulePack();
        return Refusal.when(
                !RulePacks.bundled().contains(pack),
                Why.NO_SUCH_RULE_PACK,
                "The rule pack " + pack + " does not come with the program, and only those that do are proved.");
    }

    private LoadedFolder keep(ElectionFolder folder, String hash) {
        ElectionId id = folder.election().id();
        elections.insert(folder.election(), hash);
        ballots.insert(id, folder);
        return new LoadedFolder(folder, hash, rules.keep(id).pack().hash());
    }

    private void makeReady(LoadedFolder loaded) {
        watch.begin("The tables are being made ready", 0);
        statistics.gather();
        ledger.open(LedgerChain.of(loaded.id()));
    }

    private LoadResult told(LoadedFolder loaded) {
        watch.begin("What was written is being made final", 0);
        return new LoadResult(loaded.id(), false);
    }

    private static LedgerLine line(LoadedFolder loaded) {
        return LedgerLine.of(
                LedgerChain.of(loaded.id()), "election_loaded", loaded.id().value(), counts(loaded));
    }

    private static Map<String, Object> counts(LoadedFolder loaded) {
        ElectionFolder folder = loaded.folder();
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("content", loaded.hash());
        counts.put("rules", loaded.rulesHash());
        counts.put("contests", folder.contests().size());
        counts.put("styles", folder.styles().size());
        counts.put("voters", folder.voters().size());
        counts.put("mail_ballots", rows(folder.mailBallots()));
        counts.put("check_ins", rows(folder.checkIns()));
        counts.put("voted_elsewhere", folder.votedElsewhere().size());
        counts.put("transmittals", folder.transmittals().size());
        counts.put("envelopes", folder.envelopes().size());
        counts.put(
                "not_yet_keyed",
                folder.envelopes().stream()
                        .filter(ElectionLoadService::waits)
                        .map(Envelope::envelopeNo)
                        .toList());
        return counts;
    }

    private static boolean waits(Envelope envelope) {
        return envelope.affirmation().fieldStates().containsValue(Envelope.FieldState.NOT_YET_KEYED);
    }

    private static int rows(Map<VoterId, ? extends List<?>> byVoter) {
        return byVoter.values().stream().mapToInt(List::size).sum();
    }
}
