package org.proviso.board;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.proviso.core.act.Refusal;

/** What became of an act of the board: it was recorded, or it is not legal now and nothing was written. */
public sealed interface BoardActResult<T> {

    /** Recorded; the thing as it is now. */
    record Done<T>(T now) implements BoardActResult<T> {}

    /** Not legal now: every reason, the first one first. */
    record Refused<T>(List<Refusal> why) implements BoardActResult<T> {

        /** All reasons as the person reads them. */
        public String words() {
            return why.stream().map(Refusal::words).collect(Collectors.joining(" "));
        }
    }

    /** Does it where nothing stands in the way. */
    static <T> BoardActResult<T> unless(Optional<Refusal> refusal, Supplier<T> act) {
        return unless(refusal.stream().toList(), act);
    }

    /** Does it where nothing stands in the way. */
    static <T> BoardActResult<T> unless(List<Refusal> refusals, Supplier<T> act) {
        return refusals.isEmpty() ? new Done<>(act.get()) : new Refused<>(refusals);
    }
}
