package org.proviso.today.calendar;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.rules.RulesInForceService;
import org.springframework.stereotype.Component;

/** The deadlines of an election with what the office has set down: the board's first session dates what waits for it. */
@Component
class ElectionDates {

    private final RulesInForceService rules;
    private final BoardService board;

    ElectionDates(RulesInForceService rules, BoardService board) {
        this.rules = rules;
        this.board = board;
    }

    /** The book of the rules in force; what counts from the board's meeting is dated once a session is called. */
    DeadlineBook book(ElectionId electionId) {
        DeadlineBook book = rules.book(electionId);
        return meeting(electionId)
                .map(meeting -> book.with(DeadlineAnchor.BOARD_MEETING, meeting))
                .orElse(book);
    }

    /** When the board's first session is called for. */
    Optional<LocalDateTime> meeting(ElectionId electionId) {
        return board.sessions(electionId).stream().map(BoardSession::calledFor).min(Comparator.naturalOrder());
    }
}
