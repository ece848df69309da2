package org.proviso.today.calendar;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.rules.RulesInForceService;
import org.springframework.stereotype.Component;

/** The deadlines of an election as the rules in force date them; what counts from the board's meeting waits for a call. */
@Component
class ElectionDates {

    private final RulesInForceService rules;

    ElectionDates(RulesInForceService rules) {
        this.rules = rules;
    }

    DeadlineBook book(ElectionId electionId) {
        return rules.book(electionId);
    }

    /** When the board meets, where deadlines of this election count from it and a meeting is called. */
    static Optional<LocalDateTime> meeting(DeadlineBook book) {
        return Optional.ofNullable(book.acts().get(DeadlineAnchor.BOARD_MEETING));
    }
}
