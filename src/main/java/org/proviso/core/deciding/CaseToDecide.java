package org.proviso.core.deciding;

import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.judging.Assessment;

/**
 * One case as it comes to the decider: what the rules say as it stands, the contests named to count (empty: as
 * recommended), the grounds offered, and who did what.
 */
public record CaseToDecide(Assessment settled, Set<String> contests, Grounds grounds, DecisionParticipants acts) {

    /** With no contests named. */
    public CaseToDecide(Assessment settled, Grounds grounds, DecisionParticipants acts) {
        this(settled, Set.of(), grounds, acts);
    }

    Optional<CountAgainstRules> against(DecisionOutcome as) {
        return CountAgainstRules.of(as, contests, settled);
    }
}
