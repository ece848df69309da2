package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/** The decision in force: outcome, reasons, legal reference, when (county time), and who decided. */
public record DecisionSummary(
        DecisionOutcome as, List<Reason> reasons, String legalReference, String decider, LocalDateTime at) {}
