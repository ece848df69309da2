package org.proviso.today;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.intake.keying.KeyingService;
import org.proviso.notices.DueNotice;
import org.proviso.notices.NoticeService;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.queue.CaseCounts;
import org.proviso.ui.UsDates;
import org.springframework.stereotype.Component;

/** What waits for whoever looks, in the order of the work: only what their roles let them do. */
@Component
class WaitingWorkList {

    private final AccessService access;
    private final KeyingService keying;
    private final NoticeService notices;
    private final ReleaseService release;
    private final BoardService board;
    private final UpcomingDates clocks;

    WaitingWorkList(
            AccessService access,
            KeyingService keying,
            NoticeService notices,
            ReleaseService release,
            BoardService board,
            UpcomingDates clocks) {
        this.access = access;
        this.keying = keying;
        this.notices = notices;
        this.release = release;
        this.board = board;
        this.clocks = clocks;
    }

    List<WaitingWork> of(String electionId, CaseCounts tally, LocalDateTime now) {
        List<WaitingWork> lines = new ArrayList<>();
        if (access.isPermitted(Permission.KEY_ENVELOPES)) {
            add(lines, keying(electionId));
        }
        if (access.isPermitted(Permission.PROPOSE)) {
            String by = beforeTheBoard(electionId, now);
            add(lines, withYou(tally, by));
            add(lines, toReview(tally, by));
            add(lines, secondReading(tally, by));
        }
        if (access.isPermitted(Permission.VOTE)) {
            add(lines, toDecide(tally, beforeTheBoard(electionId, now)));
        }
        if (access.isPermitted(Permission.OPEN_ENVELOPES)) {
            add(lines, toOpen(electionId));
        }
        if (access.isPermitted(Permission.PRINT_CURE_LETTERS)) {
            add(lines, notices(electionId));
        }
        return lines;
    }

    private static void add(List<WaitingWork> lines, WaitingWork line) {
        if (line.number() > 0) {
            lines.add(line);
        }
    }

    private WaitingWork keying(String electionId) {
        int number = keying.waiting(electionId).size();
        return new WaitingWork(
                number, "Envelopes to key", "received, not keyed yet", "", "Key the next", "intake", "k");
    }

    private static WaitingWork withYou(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.withYou(), "Envelopes you took", "nobody else works on them", by, "Go on", "review", null);
    }

    private static WaitingWork toReview(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.in(CaseState.OPEN),
                "Envelopes to review",
                "nobody has them yet",
                by,
                "Take the next",
                "review",
                "n");
    }

    private static WaitingWork secondReading(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.forYouToReadSecond(),
                "Proposals that need a second reader",
                "none of them proposed by you",
                by,
                "Read the next",
                "review/second",
                null);
    }

    private static WaitingWork toDecide(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.in(CaseState.READY), "Envelopes ready to decide", "read and proposed", by, "Board", "board", "b");
    }

    private WaitingWork toOpen(String electionId) {
        int number = release.waiting(electionId).size();
        return new WaitingWork(number, "Envelopes to open", "decided to count", "", "Release", "release", null);
    }

    private WaitingWork notices(String electionId) {
        List<DueNotice> due = notices.due(electionId);
        long overdue = due.stream().filter(DueNotice::overdue).count();
        return new WaitingWork(
                due.size(),
                "Voters to tell",
                overdue == 0 ? "what they may bring, or the outcome" : UsDates.count(overdue, "letter") + " overdue",
                overdue == 0 ? "today" : "now",
                "Notices",
                "notices",
                null);
    }

    private String beforeTheBoard(String electionId, LocalDateTime now) {
        if (board.sessions(electionId).stream().anyMatch(BoardSession::isOpen)) {
            return "the board is in session";
        }
        return clocks.ahead(electionId, now).stream()
                .filter(moment -> moment.what().startsWith("Board session"))
                .findFirst()
                .map(moment -> "before the board, " + UsDates.left(now, moment.at()))
                .orElse("no session called yet");
    }
}
