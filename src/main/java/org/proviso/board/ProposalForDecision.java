package org.proviso.board;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/**
 * What is proposed of an envelope, as it comes before the decider: the outcome with its grounds, who proposed it, and
 * who read it again and agreed (null where nobody had to).
 */
public record ProposalForDecision(
        DecisionOutcome outcome,
        List<Reason> reasons,
        String legalReference,
        String departsBecause,
        UserName proposedBy,
        @Nullable UserName secondReadBy) {

    @Nullable
    public Reason primaryReason() {
        return reasons.isEmpty() ? null : reasons.get(0);
    }

    /** Whether an item of the agenda still says what is proposed. */
    public boolean isAsOn(AgendaItem item) {
        return outcome == item.proposed() && primaryReason() == item.primaryReason();
    }
}
