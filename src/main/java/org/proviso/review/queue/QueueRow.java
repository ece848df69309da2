package org.proviso.review.queue;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;
import org.proviso.review.facts.WaitsFor;

/**
 * A case in a line of a list: where and when it was cast, why it was issued, in which language it was written, where it
 * stands, who has it since when (the last act on it), and the outlook of its newest assessment. {@code at} is the moment
 * its turn goes by, the voter's deadline or the time of the vote (local to the county, null where nobody noted one);
 * {@code waitsFor} who was asked something and has not answered (null: nobody).
 */
public record QueueRow(
        EnvelopeNumber envelopeNo,
        String votingLocation,
        String precinct,
        String language,
        List<String> issueReasons,
        CaseState state,
        QueueReason turn,
        @Nullable LocalDateTime at,
        @Nullable WaitsFor waitsFor,
        Recommendation outlook,
        @Nullable String with,
        Instant since) {

    /** Why the case stands where it does: {@code waiting for a colleague}, {@code voter deadline}. */
    public String turnWords() {
        return waitsFor == null ? turn.words() : "waiting for " + waitsFor.words();
    }

    /** Until when the voter has time; empty where the place in the queue is no deadline. */
    public Optional<LocalDateTime> due() {
        return turn == QueueReason.CURE || turn == QueueReason.VOTER ? Optional.ofNullable(at) : Optional.empty();
    }
}
