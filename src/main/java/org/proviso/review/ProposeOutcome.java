package org.proviso.review;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;
import org.proviso.core.rules.Reason;

/** How a reviewer proposes to settle a case; texts are empty where there is none. */
public record ProposeOutcome(
        @NotNull EnvelopeKey key,
        int version,
        @NotNull DecisionOutcome as,
        @NotNull List<Reason> reasons,
        @NotNull @Size(max = 1000) String legalReference,
        @NotNull @Size(max = 4000) String departsBecause) {

    public Grounds grounds() {
        return new Grounds(reasons, legalReference, departsBecause);
    }
}
