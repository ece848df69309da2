package org.proviso.review.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Something the records say happened, or has to by then: local to the county; a time of day only where one is noted. */
public record TimeLineEvent(
        @Nullable LocalDate day, @Nullable LocalDateTime at, String words, Kind kind) {

    /** How it appears in the time line. */
    public enum Kind {
        HAPPENED,
        THIS_ENVELOPE,
        DEADLINE
    }

    static TimeLineEvent on(@Nullable LocalDate day, String words) {
        return new TimeLineEvent(day, null, words, Kind.HAPPENED);
    }

    static TimeLineEvent at(LocalDateTime at, String words) {
        return new TimeLineEvent(at.toLocalDate(), at, words, Kind.HAPPENED);
    }

    static TimeLineEvent deadline(LocalDateTime at, String words) {
        return new TimeLineEvent(at.toLocalDate(), at, words, Kind.DEADLINE);
    }

    static TimeLineEvent envelope(@Nullable LocalDateTime at, String words) {
        return new TimeLineEvent(at == null ? null : at.toLocalDate(), at, words, Kind.THIS_ENVELOPE);
    }

    /** Sort order: moments without a day come first. */
    LocalDateTime order() {
        return at != null ? at : day == null ? LocalDateTime.MIN : day.atStartOfDay();
    }
}
