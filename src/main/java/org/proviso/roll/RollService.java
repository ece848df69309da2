package org.proviso.roll;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.proviso.core.BetweenRooms;
import org.proviso.core.CheckIn;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.StateListMatches;
import org.proviso.core.matching.index.RollChange;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.election.ElectionLoaded;
import org.proviso.election.LoadWatch;
import org.proviso.files.ContentHash;
import org.proviso.files.election.ElectionFolder;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The roll and the lists beside it, each as the snapshot in use has it. For services; a page shows a voter in a case. */
@BetweenRooms
@Service
public class RollService {

    private static final int COMPARED = 1_000;

    private final SnapshotStore snapshots;
    private final VoterStore voters;
    private final VotingRecordStore records;
    private final SnapshotComparisonStore comparisons;
    private final SetAsideKeeper asides;
    private final LoadWatch watch;

    RollService(
            SnapshotStore snapshots,
            VoterStore voters,
            VotingRecordStore records,
            SnapshotComparisonStore comparisons,
            SetAsideKeeper asides,
            LoadWatch watch) {
        this.asides = asides;
        this.snapshots = snapshots;
        this.voters = voters;
        this.records = records;
        this.comparisons = comparisons;
        this.watch = watch;
    }

    /** Takes the lists of a folder, in the transaction that loads the election. */
    @EventListener
    @Order(ElectionLoaded.ROLL_TAKES)
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeLists(ElectionLoaded loaded) {
        ElectionId id = loaded.electionId();
        ElectionFolder folder = loaded.folder();
        int roll = begin(
                id,
                SnapshotKind.ROLL,
                rollFile(folder.folder()),
                folder.voters().size());
        LongConsumer progress = watch.begin("Saving the roll", folder.voters().size());
        voters.load(id, roll, folder.voters().values()::forEach, progress);
        watch.begin("Saving the other lists", 0);
        List<MailBallot> ballots = flat(folder.mailBallots());
        int mail = begin(id, SnapshotKind.MAIL_BALLOTS, folder.folder().resolve("mail-ballots.csv"), ballots.size());
        records.insertMailBallots(id, mail, ballots);
        List<CheckIn> checkIns = flat(folder.checkIns());
        int books = begin(id, SnapshotKind.CHECK_INS, folder.folder().resolve("check-ins.csv"), checkIns.size());
        records.insertCheckIns(id, books, checkIns);
        List<VotedElsewhere> lines = folder.votedElsewhere();
        int state =
                begin(id, SnapshotKind.VOTED_ELSEWHERE, folder.folder().resolve("voted-elsewhere.csv"), lines.size());
        records.insertVotedElsewhere(id, state, lines);
        snapshots.use(id, SnapshotKind.ROLL, roll);
        snapshots.use(id, SnapshotKind.MAIL_BALLOTS, mail);
        snapshots.use(id, SnapshotKind.CHECK_INS, books);
        snapshots.use(id, SnapshotKind.VOTED_ELSEWHERE, state);
        asides.keep(
                loaded,
                Map.of(
                        rollFile(folder.folder()).getFileName().toString(),
                        roll,
                        "mail-ballots.csv",
                        mail,
                        "check-ins.csv",
                        books,
                        "voted-elsewhere.csv",
                        state));
    }

    /** The hash of the file that the roll in use came from: while it is the same, so is the roll. */
    @Transactional(readOnly = true)
    public String rollHash(ElectionId electionId) {
        return snapshots.contentHash(electionId, SnapshotKind.ROLL);
    }

    /** The number of the list of this kind that is in use. */
    @Transactional(readOnly = true)
    public int snapshotInUse(ElectionId electionId, SnapshotKind kind) {
        return snapshots.inUse(electionId, kind);
    }

    @Transactional(readOnly = true)
    public Optional<Voter> voter(ElectionId electionId, VoterId voterId) {
        return voters.find(electionId, voterId);
    }

    /** The records of several voters, by voter id; one that the roll does not have is not in it. */
    @Transactional(readOnly = true)
    public Map<VoterId, Voter> voters(ElectionId electionId, Collection<VoterId> voterIds) {
        return voters.find(electionId, voterIds);
    }

    /** The mail ballots of several voters, by voter id; one who asked for none is not in it. */
    @Transactional(readOnly = true)
    public Map<VoterId, List<MailBallot>> mailBallots(ElectionId electionId, Collection<VoterId> voterIds) {
        return records.mailBallots(electionId, voterIds);
    }

    /** What the poll books have of several voters, by voter id; one of whom they have nothing is not in it. */
    @Transactional(readOnly = true)
    public Map<VoterId, List<CheckIn>> checkIns(ElectionId electionId, Collection<VoterId> voterIds) {
        return records.checkIns(electionId, voterIds);
    }

    /** Every record of the roll in the order of its file. */
    @Transactional(readOnly = true)
    public List<Voter> roll(ElectionId electionId) {
        return voters.all(electionId);
    }

    /** Hands over what the index needs of each record of the roll, in no order, without holding the roll. */
    @Transactional(readOnly = true)
    public void entries(ElectionId electionId, Consumer<RollEntry> each) {
        voters.entries(electionId, each);
    }

    /** The number of a roll with that content, where the office holds one for this election. */
    @Transactional(readOnly = true)
    public OptionalInt snapshotOf(ElectionId electionId, String rollHash) {
        return snapshots.withContent(electionId, SnapshotKind.ROLL, rollHash).stream()
                .mapToInt(Snapshot::number)
                .findFirst();
    }

    /** Hands over what two rolls say of every voter whose record differs between them, a few at a time. */
    @Transactional(readOnly = true)
    public void changes(ElectionId electionId, int from, int to, Consumer<RollChange> each) {
        changes(electionId, from, to, comparisons.touched(electionId, SnapshotKind.ROLL, from, to), each);
    }

    /** The same of voters known to differ. */
    @Transactional(readOnly = true)
    public void changes(
            ElectionId electionId, int from, int to, Collection<VoterId> voterIds, Consumer<RollChange> each) {
        List<VoterId> ids = List.copyOf(voterIds);
        for (int start = 0; start < ids.size(); start += COMPARED) {
            List<VoterId> some = ids.subList(start, Math.min(ids.size(), start + COMPARED));
            Map<VoterId, RollEntry> before = voters.entries(electionId, from, some);
            Map<VoterId, RollEntry> after = voters.entries(electionId, to, some);
            some.forEach(id -> each.accept(new RollChange(before.get(id), after.get(id))));
        }
    }

    /** What the index needs of some voters of the roll in use. */
    @Transactional(readOnly = true)
    public Collection<RollEntry> entriesOf(ElectionId electionId, Collection<VoterId> voterIds) {
        return voters.entries(electionId, snapshots.inUse(electionId, SnapshotKind.ROLL), voterIds)
                .values();
    }

    @Transactional(readOnly = true)
    public List<MailBallot> mailBallots(ElectionId electionId, VoterId voterId) {
        return records.mailBallots(electionId, voterId);
    }

    @Transactional(readOnly = true)
    public List<CheckIn> checkIns(ElectionId electionId, VoterId voterId) {
        return records.checkIns(electionId, voterId);
    }

    @Transactional(readOnly = true)
    public List<VotedElsewhere> votedElsewhere(ElectionId electionId) {
        return records.votedElsewhere(electionId);
    }

    /** Lines of the state's list with one of these birth dates or licenses, in the order of its file. */
    @Transactional(readOnly = true)
    public List<VotedElsewhere> votedElsewhere(ElectionId electionId, Set<LocalDate> births, Set<String> licenses) {
        return records.votedElsewhere(electionId, births, licenses);
    }

    /** Lines of the state's list that may be about the voter of an envelope, in the order of its file. */
    @Transactional(readOnly = true)
    public List<VotedElsewhere> votedElsewhere(ElectionId electionId, Envelope envelope, Optional<Voter> voter) {
        Envelope.Affirmation said = envelope.affirmation();
        List<VotedElsewhere> near = records.votedElsewhere(
                electionId,
                Arrays.asList(said.birthDate(), voter.map(Voter::birthDate).orElse(null)),
                Arrays.asList(
                        said.driversLicense(), voter.map(Voter::driversLicense).orElse("")));
        return StateListMatches.resembling(near, envelope, voter);
    }

    private int begin(ElectionId id, SnapshotKind kind, Path file, int rows) {
        return snapshots.add(id, kind, ContentHash.ofFile(file), rows);
    }

    private static Path rollFile(Path folder) {
        Path csv = folder.resolve("roll.csv");
        return Files.exists(csv) ? csv : folder.resolve("roll.json");
    }

    private static <T> List<T> flat(Map<VoterId, List<T>> byVoter) {
        return byVoter.values().stream().flatMap(Collection::stream).toList();
    }
}
