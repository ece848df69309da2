package org.proviso.board;

import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/**
 * An envelope on a session's agenda, in its place from 1: what was proposed when it was put there (null where it was
 * decided before and is there to be opened again), its primary reason if there is one, the number of its consent group
 * (null where it stands alone from the start), and who pulled it out of that group.
 */
public record AgendaItem(
        EnvelopeNumber envelopeNo,
        int place,
        @Nullable DecisionOutcome proposed,
        @Nullable Reason primaryReason,
        @Nullable Integer group,
        @Nullable String pulledOutBy,
        int version) {

    /** Whether it is moved and voted on by itself. */
    public boolean standsAlone() {
        return group == null || pulledOutBy != null;
    }
}
