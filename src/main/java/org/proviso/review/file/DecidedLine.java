package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;

/** The decision that stands: the outcome, its reasons, its place in the law, when on the county's clock, and who decided. */
public record DecidedLine(
        DecidedAs as, List<Reason> reasons, String legalReference, String decider, LocalDateTime at) {}
