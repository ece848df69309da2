package org.proviso.election.rules;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CountyRuling;
import org.proviso.core.UserName;

/**
 * A county ruling as one supervisor recorded it, and when another put it in force or somebody took it back (null while
 * neither happened). Of a ruling from before two people were needed nobody is named who put it in force.
 */
public record RecordedRuling(
        int actNo,
        CountyRuling ruling,
        UserName recordedBy,
        Instant recordedAt,
        @Nullable UserName inForceBy,
        @Nullable Instant inForceAt,
        @Nullable Instant takenBackAt) {

    /** Whether it waits for a second supervisor. */
    public boolean isWaiting() {
        return inForceAt == null && takenBackAt == null;
    }
}
