package org.proviso.review.ends;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;
import org.proviso.review.Proposal;

/**
 * That a case is proposed to end without a decision: sent on to another county (empty where it is not), or closed because
 * there is no vote to decide; and who read it again (null while nobody did), with a note where it was returned.
 */
public record EndProposal(
        EnvelopeKey key,
        int number,
        Recommendation as,
        String toCounty,
        List<Reason> reasons,
        String legalReference,
        int assessment,
        UserName proposedBy,
        Instant proposedAt,
        Proposal.State state,
        @Nullable UserName readBy,
        @Nullable Instant readAt,
        String note) {

    /** Whether the envelope leaves the county. */
    public boolean sendsOn() {
        return as == Recommendation.SENT_ON;
    }

    /** What is proposed, as the office says it: {@code send on to Birch County}. */
    public String words() {
        return sendsOn() ? "send on to " + toCounty : "close without a decision";
    }
}
