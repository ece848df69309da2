package org.proviso.review.queue;

import java.time.Instant;
import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;

/**
 * A proposal waiting for second review: what was proposed, to which county where the envelope is to be sent on (else
 * empty), with which reasons, by whom (full name), and when.
 */
public record ProposalToReview(
        EnvelopeNumber envelopeNo,
        Recommendation as,
        String toCounty,
        List<Reason> reasons,
        String proposedBy,
        Instant at) {

    /** What is proposed, as the office says it. */
    public String words() {
        return switch (as) {
            case SENT_ON -> "send on to " + toCounty;
            case ADMINISTRATIVE_END -> "close without a decision";
            default -> as.words();
        };
    }
}
