package org.proviso.review.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Something the records say happened, or has to by then: local to the county; a time of day only where one is noted. */
public record Moment(@Nullable LocalDate day, @Nullable LocalDateTime at, String words, Kind kind) {

    /** How it appears in the time line. */
    public enum Kind {
        HAPPENED,
        THIS_ENVELOPE,
        DEADLINE
    }

    static Moment on(@Nullable LocalDate day, String words) {
        return new Moment(day, null, words, Kind.HAPPENED);
    }

    static Moment at(LocalDateTime at, String words) {
        return new Moment(at.toLocalDate(), at, words, Kind.HAPPENED);
    }

    static Moment deadline(LocalDateTime at, String words) {
        return new Moment(at.toLocalDate(), at, words, Kind.DEADLINE);
    }

    static Moment envelope(@Nullable LocalDateTime at, String words) {
        return new Moment(at == null ? null : at.toLocalDate(), at, words, Kind.THIS_ENVELOPE);
    }

    /** Sort order: moments without a day come first. */
    LocalDateTime order() {
        return at != null ? at : day == null ? LocalDateTime.MIN : day.atStartOfDay();
    }
}
