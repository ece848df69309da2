package org.proviso.today;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.intake.KeyingService;
import org.proviso.notices.DueNotice;
import org.proviso.notices.NoticeService;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.queue.Tally;
import org.proviso.ui.UsDates;
import org.springframework.stereotype.Component;

/** What waits for the signed-in person, in the order of the work, limited to their roles. */
@Component
class WaitingLines {

    private final AccessService access;
    private final KeyingService keying;
    private final NoticeService notices;
    private final ReleaseService release;
    private final BoardService board;
    private final Clocks clocks;

    WaitingLines(
            AccessService access,
            KeyingService keying,
            NoticeService notices,
            ReleaseService release,
            BoardService board,
            Clocks clocks) {
        this.access = access;
        this.keying = keying;
        this.notices = notices;
        this.release = release;
        this.board = board;
        this.clocks = clocks;
    }

    List<Waiting> of(String electionId, Tally tally, LocalDateTime now) {
        List<Waiting> lines = new ArrayList<>();
        if (access.may(Act.KEY_ENVELOPES)) {
            add(lines, keying(electionId));
        }
        if (access.may(Act.PROPOSE)) {
            String by = beforeTheBoard(electionId, now);
            add(lines, withYou(tally, by));
            add(lines, toReview(tally, by));
            add(lines, secondReading(tally, by));
        }
        if (access.may(Act.VOTE)) {
            add(lines, toDecide(tally, beforeTheBoard(electionId, now)));
        }
        if (access.may(Act.OPEN_ENVELOPES)) {
            add(lines, toOpen(electionId));
        }
        if (access.may(Act.PRINT_CURE_LETTERS)) {
            add(lines, notices(electionId));
        }
        return lines;
    }

    private static void add(List<Waiting> lines, Waiting line) {
        if (line.number() > 0) {
            lines.add(line);
        }
    }

    private Waiting keying(String electionId) {
        int number = keying.waiting(electionId).size();
        return new Waiting(
                number, "Envelopes to key", "received, not keyed yet", "", "Key next envelope", "intake", "k");
    }

    private static Waiting withYou(Tally tally, String by) {
        return new Waiting(
                tally.withYou(),
                "Cases assigned to me",
                "only you are working on them",
                by,
                "Continue review",
                "review",
                null);
    }

    private static Waiting toReview(Tally tally, String by) {
        return new Waiting(
                tally.in(CaseState.OPEN),
                "Envelopes to review",
                "not assigned yet",
                by,
                "Take next case",
                "review",
                "n");
    }

    private static Waiting secondReading(Tally tally, String by) {
        return new Waiting(
                tally.forYouToReadSecond(),
                "Proposals waiting for second review",
                "not counting your own",
                by,
                "Review next proposal",
                "review/second",
                null);
    }

    private static Waiting toDecide(Tally tally, String by) {
        return new Waiting(
                tally.in(CaseState.READY),
                "Envelopes ready to decide",
                "reviewed and proposed",
                by,
                "Open Board",
                "board",
                "b");
    }

    private Waiting toOpen(String electionId) {
        int number = release.waiting(electionId).size();
        return new Waiting(number, "Envelopes to open", "decided to count", "", "Open Release", "release", null);
    }

    private Waiting notices(String electionId) {
        List<DueNotice> due = notices.due(electionId);
        long overdue = due.stream().filter(DueNotice::overdue).count();
        return new Waiting(
                due.size(),
                "Voters to notify",
                overdue == 0 ? "cure notices and outcomes" : UsDates.count(overdue, "letter") + " overdue",
                overdue == 0 ? "today" : "now",
                "Open Notices",
                "notices",
                null);
    }

    private String beforeTheBoard(String electionId, LocalDateTime now) {
        if (board.sessions(electionId).stream().anyMatch(BoardSession::isOpen)) {
            return "the board is in session";
        }
        return clocks.nextSession(electionId, now)
                .map(moment -> "board meets in " + UsDates.left(now, moment.at()))
                .orElse("no session called yet");
    }
}
