package org.proviso.review.decide;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;

/**
 * What was done about a contradicted decision: the decider let it stand (by the motion named), or, once nothing could be
 * undone, somebody wrote down what followed (no motion). It holds for what the rules said then, and no longer.
 */
public record FollowUp(
        EnvelopeKey key,
        Recommendation says,
        List<Reason> reasons,
        String note,
        @Nullable Integer sessionNo,
        @Nullable Integer motionNo,
        UserName recordedBy,
        Instant recordedAt) {

    /** What the rules said then, with the reasons. */
    public String said() {
        return ContradictedDecision.said(says, reasons);
    }
}
