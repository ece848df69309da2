package org.proviso.review.queue;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/**
 * A case in a line of the queue: where and when it was cast, why it was issued, where it stands, who has it since when,
 * and the outlook of its newest assessment. {@code at} is the moment its turn goes by, the voter's deadline or the time
 * of the vote (local to the county, null where nobody noted one).
 */
public record QueueRow(
        EnvelopeNumber envelopeNo,
        String votingLocation,
        List<String> issueReasons,
        CaseState state,
        QueueReason turn,
        @Nullable LocalDateTime at,
        Recommendation outlook,
        @Nullable String with,
        Instant since) {}
