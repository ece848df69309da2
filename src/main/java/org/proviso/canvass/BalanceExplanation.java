package org.proviso.canvass;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;

/**
 * Why a total cannot agree, in the words of one supervisor, signed by another. It is for the difference it was written
 * for ({@code difference}; null where a figure cannot be told at all): once the total is off by another number, it
 * explains nothing and a new one is written. Moments are in UTC.
 */
public record BalanceExplanation(
        ElectionId electionId,
        int number,
        CanvassPlace where,
        BalanceRule identity,
        @Nullable Integer difference,
        String because,
        UserName writtenBy,
        Instant writtenAt,
        @Nullable UserName signedBy,
        @Nullable Instant signedAt,
        int version) {

    /** Whether two people have signed it. */
    public boolean isSigned() {
        return signedBy != null;
    }

    /** Whether it is about how the total stands now. */
    public boolean isAbout(BalanceResult balance) {
        return balance.where().equals(where) && balance.identity() == identity && balance.isOffBy(difference);
    }
}
