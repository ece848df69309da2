package org.proviso.review.queue;

import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/** Which cases of an election a list shows; null leaves a matter open. {@code with} is a user name. */
public record QueueFilter(
        ElectionId electionId,
        @Nullable CaseState state,
        @Nullable Recommendation outlook,
        @Nullable String votingLocation,
        @Nullable String with) {}
