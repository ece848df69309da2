package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;

/** The decision in force: outcome, reasons, legal reference, when (county time), and who decided. */
public record DecidedLine(
        DecidedAs as, List<Reason> reasons, String legalReference, String decider, LocalDateTime at) {}
