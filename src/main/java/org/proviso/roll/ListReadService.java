package org.proviso.roll;

import java.nio.file.Path;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The lists of an election for whoever loads files: those the office holds, and a newer one beside the one in use. */
@Service
public class ListReadService {

    private final SnapshotService snapshots;
    private final AccessService access;

    ListReadService(SnapshotService snapshots, AccessService access) {
        this.snapshots = snapshots;
        this.access = access;
    }

    /** Reads a file whole and compares it with the list in use; as {@link SnapshotService#stage}. */
    @Transactional
    public StagedList stage(ElectionId electionId, SnapshotKind kind, Path file) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.stage(electionId, kind, file);
    }

    /** The lists that the office holds of an election, in use or not. */
    @Transactional(readOnly = true)
    public List<HeldList> held(ElectionId electionId) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.held(electionId);
    }

    /** A list staged earlier, compared again with the one in use now. */
    @Transactional(readOnly = true)
    public StagedList staged(ElectionId electionId, int snapshotNo) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.staged(electionId, snapshotNo);
    }
}
