package org.proviso.core;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** What a poll book recorded of a voter; times are local to the county. */
public record CheckIn(
        VoterId voterId,
        String votingLocation,
        LocalDateTime at,
        Kind kind,
        YesNo ballotIssued,
        @Nullable LocalDateTime cancelledAt) {

    /** Whether the check-in was for a regular ballot or for a provisional one. */
    public enum Kind implements Code {
        REGULAR,
        PROVISIONAL
    }
}
