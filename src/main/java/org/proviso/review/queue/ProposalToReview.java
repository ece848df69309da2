package org.proviso.review.queue;

import java.time.Instant;
import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/** A proposal waiting for second review: what was proposed, with which reasons, by whom (full name), and when. */
public record ProposalToReview(
        EnvelopeNumber envelopeNo, DecisionOutcome as, List<Reason> reasons, String proposedBy, Instant at) {}
