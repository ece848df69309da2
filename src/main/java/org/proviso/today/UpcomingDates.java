package org.proviso.today;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.election.rules.RulesInForceService;
import org.springframework.stereotype.Component;

/** The deadlines and sessions ahead, next first, in county time. */
@Component
public class UpcomingDates {

    private final RulesInForceService rules;
    private final BoardService board;

    UpcomingDates(RulesInForceService rules, BoardService board) {
        this.rules = rules;
        this.board = board;
    }

    /** A moment: what happens, and the rule or session behind it. */
    public record UpcomingDate(String what, String behind, LocalDateTime at) {}

    /** Those still to come. */
    public List<UpcomingDate> ahead(ElectionId electionId, LocalDateTime now) {
        return all(electionId).stream()
                .filter(moment -> moment.at().isAfter(now))
                .toList();
    }

    /** Where the board stands, if no session is ahead: in session, or none called. Empty where one has its clock. */
    Optional<String> meeting(ElectionId electionId, LocalDateTime now) {
        if (board.sessions(electionId).stream().anyMatch(BoardSession::isOpen)) {
            return Optional.of("The board is in session.");
        }
        return sessions(electionId).stream().anyMatch(moment -> moment.at().isAfter(now))
                ? Optional.empty()
                : Optional.of("No session of the board is called.");
    }

    private List<UpcomingDate> all(ElectionId electionId) {
        DeadlineBook book = rules.book(electionId);
        List<UpcomingDate> moments = new ArrayList<>();
        for (Ask ask : Ask.values()) {
            add(moments, book, Rule.cure(ask), "Deadline to " + ask.words());
        }
        add(moments, book, Rules.GATE_REVIEW, "Envelopes may be reviewed");
        add(moments, book, Rules.GATE_DECISION, "Envelopes may be decided");
        add(moments, book, Rules.GATE_OPEN, "Envelopes may be opened");
        add(moments, book, Rules.MAIL_RECEIPT, "Deadline for mail ballots to arrive");
        add(moments, book, Rules.DECISION, "Deadline to decide every envelope");
        add(moments, book, Rules.CERTIFICATION, "Certification");
        sessions(electionId).forEach(moments::add);
        moments.sort(Comparator.comparing(UpcomingDate::at));
        return moments;
    }

    private List<UpcomingDate> sessions(ElectionId electionId) {
        return board.sessions(electionId).stream()
                .filter(session -> session.closedAt() == null)
                .map(UpcomingDates::moment)
                .toList();
    }

    private static UpcomingDate moment(BoardSession session) {
        return new UpcomingDate("Board session " + session.key().sessionNo(), session.place(), session.calledFor());
    }

    private static void add(List<UpcomingDate> moments, DeadlineBook book, Rule rule, String what) {
        Optional<Deadline> deadline = book.of(rule);
        deadline.ifPresent(found -> moments.add(new UpcomingDate(what, reference(book, rule), found.lastMoment())));
    }

    private static String reference(DeadlineBook book, Rule rule) {
        return book.pack().of(rule).reference().words();
    }
}
