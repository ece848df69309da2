package org.proviso.roll;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.election.ElectionService;
import org.proviso.files.ContentHash;
import org.proviso.files.InputException;
import org.proviso.roll.aside.MendRow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Newer lists that come in after the first load. One is staged beside the list in use; whoever knows which cases it
 * touches then puts it in use, and makes the entry in the ledger.
 */
@BetweenRooms
@Service
public class SnapshotService {

    private final SnapshotStore snapshots;
    private final ListLoader loader;
    private final SnapshotComparisonStore comparisons;
    private final DifferenceWords words;
    private final SetAsideStore asides;
    private final MendedRows mended;
    private final ElectionService elections;

    SnapshotService(
            SnapshotStore snapshots,
            ListLoader loader,
            SnapshotComparisonStore comparisons,
            DifferenceWords words,
            SetAsideStore asides,
            MendedRows mended,
            ElectionService elections) {
        this.mended = mended;
        this.asides = asides;
        this.snapshots = snapshots;
        this.loader = loader;
        this.comparisons = comparisons;
        this.words = words;
        this.elections = elections;
    }

    /**
     * Reads a file whole, or throws {@link org.proviso.files.InputException} and writes nothing. A file that is in the
     * office already, in use or staged, is recognised by its content. No entry in the ledger: what matters is use.
     */
    @Transactional
    public StagedList stage(ElectionId electionId, SnapshotKind kind, Path file) {
        return stage(electionId, kind, file, loader::load);
    }

    /**
     * The same, but bad rows are set aside with the list: who brings it decides whether it is used without them. Damage
     * to the file as a whole throws all the same.
     */
    @Transactional
    public StagedList stageSettingAside(ElectionId electionId, SnapshotKind kind, Path file) {
        return stage(electionId, kind, file, loader::loadSettingAside);
    }

    private StagedList stage(ElectionId electionId, SnapshotKind kind, Path file, Loading loading) {
        elections.zone(electionId);
        List<String> warnings = new ArrayList<>();
        ListLoader.demandFile(file);
        String hash = ContentHash.ofFile(file);
        Optional<Snapshot> known = snapshots.withContent(electionId, kind, hash);
        Snapshot snapshot = known.isPresent() ? known.get() : loading.load(electionId, kind, file, hash, warnings::add);
        return compare(electionId, snapshot, known.isPresent(), warnings);
    }

    /** How a file becomes a list. */
    private interface Loading {
        Snapshot load(ElectionId id, SnapshotKind kind, Path file, String hash, Consumer<String> warn);
    }

    /** A list by its number, while the office has it. */
    @Transactional(readOnly = true)
    public Optional<StagedList> find(ElectionId electionId, int snapshotNo) {
        return snapshots.find(electionId, snapshotNo).map(snapshot -> compare(electionId, snapshot, true, List.of()));
    }

    /** How many rows of the lists in use are set aside. */
    @Transactional(readOnly = true)
    public int asideInUse(ElectionId electionId) {
        return asides.inUse(electionId);
    }

    /** Somebody decided to use a list without the rows that are set aside; within the act that puts it in use. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void useWithoutAside(ElectionId electionId, int snapshotNo, String because, UserName by) {
        asides.decide(electionId, snapshotNo, because, by);
    }

    /**
     * Makes a newer list of one with a row of it mended; empty where it has a row of that key already. Throws {@link
     * org.proviso.files.InputException} where the row still does not read.
     */
    @Transactional(propagation = Propagation.MANDATORY, noRollbackFor = InputException.class)
    public Optional<StagedList> mend(MendRow row, UserName by) {
        Snapshot list = demand(row.electionId(), row.snapshotNo());
        return mended.mend(row.electionId(), list, row, by).map(number -> staged(row.electionId(), number));
    }

    /** Whether a list was made by mending a row of another one. */
    @Transactional(readOnly = true)
    public boolean isMended(ElectionId electionId, int snapshotNo) {
        return asides.mendedFrom(electionId, snapshotNo).isPresent();
    }

    /** Whether a list was made by mending a row of one that is no longer in use: it would take back what came since. */
    @Transactional(readOnly = true)
    public boolean isOvertaken(ElectionId electionId, int snapshotNo) {
        SnapshotKind kind = demand(electionId, snapshotNo).kind();
        return asides.mendedFrom(electionId, snapshotNo)
                .filter(from -> from != snapshots.inUse(electionId, kind))
                .isPresent();
    }

    /** A list that was never put in use and that nobody decided to use goes, with the rows that were set aside. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void remove(ElectionId electionId, int snapshotNo) {
        Snapshot snapshot = demand(electionId, snapshotNo);
        if (asides.find(electionId, snapshotNo).isSettled()
                || snapshots.inUse(electionId, snapshot.kind()) == snapshotNo) {
            throw new IllegalStateException("List " + snapshotNo + " of " + electionId + " was decided on.");
        }
        asides.remove(electionId, snapshotNo);
        snapshots.remove(electionId, snapshot);
    }

    /** The lists that the office holds of an election, in use or not. */
    @Transactional(readOnly = true)
    public List<HeldList> held(ElectionId electionId) {
        return snapshots.all(electionId);
    }

    /** A list staged earlier, compared again with the one in use now. */
    @Transactional(readOnly = true)
    public StagedList staged(ElectionId electionId, int snapshotNo) {
        return compare(electionId, demand(electionId, snapshotNo), true, List.of());
    }

    /**
     * Puts a staged list in use in place of the one before, in one statement, within the transaction of whoever has
     * reassessed what it touches and makes the entry in the ledger.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void use(ElectionId electionId, SnapshotKind kind, int snapshotNo) {
        if (demand(electionId, snapshotNo).kind() != kind) {
            throw new IllegalArgumentException(
                    "List " + snapshotNo + " of " + electionId + " is a different kind of list.");
        }
        snapshots.use(electionId, kind, snapshotNo);
    }

    /**
     * What differs for one voter between two lists of a kind, in words: {@code mail ballot M123: outstanding ->
     * accepted}. Of the state's list, which names no voter, {@link StagedList#changedLines()} has the words.
     */
    @Transactional(readOnly = true)
    public List<String> differences(ElectionId electionId, SnapshotKind kind, VoterId voterId, int from, int to) {
        return words.of(electionId, kind, voterId, from, to);
    }

    private StagedList compare(ElectionId electionId, Snapshot snapshot, boolean known, List<String> warnings) {
        SnapshotKind kind = snapshot.kind();
        int inUse = snapshots.inUse(electionId, kind);
        boolean byLine = kind == SnapshotKind.VOTED_ELSEWHERE;
        return new StagedList(
                snapshot.number(),
                kind,
                snapshot.rows(),
                known,
                inUse,
                byLine ? Set.of() : comparisons.touched(electionId, kind, inUse, snapshot.number()),
                byLine ? comparisons.changedLines(electionId, inUse, snapshot.number()) : List.of(),
                List.copyOf(warnings),
                asides.find(electionId, snapshot.number()),
                snapshot.number() == inUse ? 0 : asides.mendedIn(electionId, inUse));
    }

    private Snapshot demand(ElectionId electionId, int snapshotNo) {
        return snapshots
                .find(electionId, snapshotNo)
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no list " + snapshotNo + " in the election " + electionId + "."));
    }
}
