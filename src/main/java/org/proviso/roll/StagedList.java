package org.proviso.roll;

import java.util.List;
import java.util.Set;
import org.proviso.core.VoterId;
import org.proviso.roll.aside.SetAsideList;

/**
 * A newer list that was read and is kept beside the one in use, with what would change if it were put in use: the
 * voters whose rows differ (of the state's list, which names no voter, the lines that do). {@code known} says that the
 * same file is in the office already, so that nothing was written; warnings are the reader's, {@code aside} the rows
 * that were set aside, {@code mendedInUse} how many rows of the list in use a person mended.
 */
public record StagedList(
        int snapshotNo,
        SnapshotKind kind,
        int rows,
        boolean known,
        int inUseNo,
        Set<VoterId> touchedVoterIds,
        List<StateListChange> changedLines,
        List<String> warnings,
        SetAsideList aside,
        int mendedInUse) {

    /** Whether this is the list in use, or one that says the same of everybody. */
    public boolean changesNothing() {
        return touchedVoterIds.isEmpty() && changedLines.isEmpty();
    }
}
