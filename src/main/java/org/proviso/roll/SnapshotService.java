package org.proviso.roll;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.proviso.election.ElectionService;
import org.proviso.files.ContentHash;
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
    private final ElectionService elections;

    SnapshotService(
            SnapshotStore snapshots,
            ListLoader loader,
            SnapshotComparisonStore comparisons,
            DifferenceWords words,
            ElectionService elections) {
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
        elections.zone(electionId);
        List<String> warnings = new ArrayList<>();
        ListLoader.demandFile(file);
        String hash = ContentHash.ofFile(file);
        Optional<Snapshot> known = snapshots.withContent(electionId, kind, hash);
        Snapshot snapshot = known.isPresent() ? known.get() : loader.load(electionId, kind, file, hash, warnings::add);
        return compare(electionId, snapshot, known.isPresent(), warnings);
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
                List.copyOf(warnings));
    }

    private Snapshot demand(ElectionId electionId, int snapshotNo) {
        return snapshots
                .find(electionId, snapshotNo)
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no list " + snapshotNo + " in the election " + electionId + "."));
    }
}
