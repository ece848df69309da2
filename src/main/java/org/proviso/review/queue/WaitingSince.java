package org.proviso.review.queue;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseState;

/**
 * How long the work on cases has waited: since when the oldest case is in each state, the oldest of those whoever looks has
 * in review and may read second (null for none), and three matters that must not be forgotten.
 */
public record WaitingSince(
        Map<CaseState, Instant> oldest,
        @Nullable Instant withYou,
        @Nullable Instant forYouToReadSecond,
        NotKeyed notKeyed,
        Held held,
        Lapsing lapsing) {

    /** Envelopes that were received more than a day ago and are not keyed; the oldest (null for none). */
    public record NotKeyed(int number, @Nullable Instant oldest) {}

    /** Cases that somebody else took more than a day ago and did nothing about; the oldest (nulls for none). */
    public record Held(
            int number,
            @Nullable EnvelopeNumber oldest,
            @Nullable Instant since) {}

    /** Cases whose voter has only until today to bring what is missing, and the first of those moments (the county's). */
    public record Lapsing(int number, @Nullable LocalDateTime first) {}

    public Optional<Instant> in(CaseState state) {
        return Optional.ofNullable(oldest.get(state));
    }
}
