package org.proviso.canvass;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;

/** A supervisor says why a total cannot agree. {@code difference} is the one on their screen; null: it cannot be checked. */
public record ExplainBalance(
        @NotNull ElectionId electionId,
        @NotNull CanvassPlace where,
        @NotNull BalanceRule identity,
        @Nullable Integer difference,
        @NotNull @Size(max = 4000) String because) {

    /** Whether it is about how the total stands. */
    boolean isAbout(BalanceResult balance) {
        return balance.where().equals(where) && balance.identity() == identity && balance.isOffBy(difference);
    }
}
