package org.proviso.notices;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;

/** By when a voter must be told of an ask, on the county's clock. */
final class DueMoment {

    private DueMoment() {}

    /** The pack's last moment, where it counts from the finding from the day found; at once where it gives none. */
    static LocalDateTime of(Ask ask, DeadlineBook book, LocalDateTime found) {
        return deadline(ask, book, found).map(Deadline::lastMoment).orElse(found);
    }

    private static Optional<Deadline> deadline(Ask ask, DeadlineBook book, LocalDateTime found) {
        Rule rule = Rule.notice(ask);
        boolean fromFinding = book.pack()
                .deadline(rule)
                .filter(dated -> dated.anchor() == DeadlineAnchor.FINDING_MADE)
                .isPresent();
        return fromFinding ? book.of(rule, found) : book.of(rule);
    }
}
