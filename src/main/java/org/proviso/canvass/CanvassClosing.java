package org.proviso.canvass;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;

/**
 * One closing of an election: its totals, the hash of the ledger's head after it, and, where the canvass was reopened,
 * why, who asked and who did it. What a closing from before this was kept cannot tell is null.
 */
public record CanvassClosing(
        ElectionId electionId,
        int number,
        @Nullable UserName closedBy,
        Instant closedAt,
        @Nullable String ledgerHead,
        @Nullable Integer received,
        @Nullable Integer counted,
        @Nullable Integer countedInPart,
        @Nullable Integer rejected,
        @Nullable UserName reopenAskedBy,
        String reopenBecause,
        @Nullable UserName reopenedBy,
        @Nullable Instant reopenedAt,
        int version) {

    /** Whether the election is closed by it now. */
    public boolean stands() {
        return reopenedAt == null;
    }

    /** Whether somebody asks that the canvass be reopened, and nobody has done it yet. */
    public boolean isAskedToReopen() {
        return stands() && reopenAskedBy != null;
    }
}
