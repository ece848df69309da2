package org.proviso.core.act;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What came of an act: it was recorded, or it cannot be done now and nothing was written. A stale version, a missing
 * permission and broken input are exceptions instead. Nobody drops a result unseen
 * ({@code ResultsSeenTest}).
 *
 * @param <T> what is new by the act
 */
public sealed interface ActResult<T> {

    /** Recorded; the thing as it is now. */
    record Accepted<T>(T now) implements ActResult<T> {}

    /** Cannot be done now: every reason, the first one first. */
    record Refused<T>(List<Refusal> refusals) implements ActResult<T> {

        public Refused {
            if (refusals.isEmpty()) {
                throw new IllegalArgumentException("an act is refused for a reason");
            }
            refusals = List.copyOf(refusals);
        }

        /** All reasons as the person reads them. */
        public String words() {
            return refusals.stream().map(Refusal::spoken).collect(Collectors.joining(" "));
        }

        /** The same reasons for an act that would have come to something else. */
        public <U> Refused<U> as() {
            return new Refused<>(refusals);
        }
    }

    static <T> ActResult<T> accepted(T now) {
        return new Accepted<>(now);
    }

    static <T> ActResult<T> refused(Refusal refusal) {
        return new Refused<>(List.of(refusal));
    }

    /** Goes on with what is new, or stays refused: for an act made of several. */
    default <U> ActResult<U> then(Function<T, ActResult<U>> next) {
        if (this instanceof Refused<T> refused) {
            return refused.as();
        }
        return next.apply(((Accepted<T>) this).now());
    }

    /** The same act with its outcome told another way. */
    default <U> ActResult<U> map(Function<T, U> told) {
        return then(now -> accepted(told.apply(now)));
    }

    /** Why it was refused; empty where it was recorded. */
    default List<Refusal> refusals() {
        return this instanceof Refused<T> refused ? refused.refusals : List.of();
    }

    /** What is new; empty where it was refused. */
    default Optional<T> ifAccepted() {
        return this instanceof Accepted<T> accepted ? Optional.of(accepted.now()) : Optional.empty();
    }

    default boolean isRefused() {
        return this instanceof Refused<T>;
    }
}
