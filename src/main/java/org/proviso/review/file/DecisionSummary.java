package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/** The decision that stands: the outcome, its reasons, its place in the law, when on the county's clock, and who decided. */
public record DecisionSummary(
        DecisionOutcome as, List<Reason> reasons, String legalReference, String decider, LocalDateTime at) {}
