package org.proviso.today;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.notices.DueCount;
import org.proviso.notices.NoticeService;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.queue.CaseCounts;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.stereotype.Component;

/** What waits for the signed-in person, in the order of the work, limited to their roles. */
@Component
class WaitingWorkList {

    private final AccessService access;
    private final KeyingService keying;
    private final NumberCheckService numbers;
    private final NoticeService notices;
    private final ReleaseService release;
    private final BoardService board;
    private final FollowUpService followUps;
    private final EndedCaseService ended;
    private final ResearchService research;
    private final SupervisorWorkList supervisors;
    private final UpcomingDates clocks;

    WaitingWorkList(
            AccessService access,
            KeyingService keying,
            NumberCheckService numbers,
            NoticeService notices,
            ReleaseService release,
            BoardService board,
            FollowUpService followUps,
            EndedCaseService ended,
            ResearchService research,
            SupervisorWorkList supervisors,
            UpcomingDates clocks) {
        this.access = access;
        this.keying = keying;
        this.numbers = numbers;
        this.notices = notices;
        this.release = release;
        this.board = board;
        this.followUps = followUps;
        this.ended = ended;
        this.research = research;
        this.supervisors = supervisors;
        this.clocks = clocks;
    }

    List<WaitingWork> of(ElectionLine election, CaseCounts tally, LocalDateTime now) {
        ElectionId electionId = election.id();
        List<WaitingWork> lines = new ArrayList<>();
        boolean towardTheBoard = access.isPermitted(Permission.PROPOSE) || access.isPermitted(Permission.VOTE);
        String by = towardTheBoard ? beforeTheBoard(electionId, now) : "";
        if (access.isPermitted(Permission.KEY_ENVELOPES)) {
            add(lines, keying(electionId));
            add(lines, numbers(electionId));
        }
        if (access.isPermitted(Permission.PROPOSE)) {
            add(lines, withYou(tally, by));
            add(lines, toReview(tally, by));
            add(lines, secondReading(tally, by));
            add(lines, withoutReceipt(electionId));
            add(lines, research(election));
        }
        if (access.isPermitted(Permission.VOTE)) {
            add(lines, toDecide(tally, by));
        }
        if (access.isPermitted(Permission.FOLLOW_UP)) {
            add(lines, contradicted(electionId));
        }
        supervisors.toConfirm(election).forEach(line -> add(lines, line));
        if (access.isPermitted(Permission.OPEN_ENVELOPES)) {
            add(lines, toOpen(electionId));
        }
        if (access.isPermitted(Permission.PRINT_CURE_LETTERS)) {
            add(lines, notices(electionId));
        }
        supervisors.closing(electionId).ifPresent(line -> add(lines, line));
        return lines;
    }

    private static void add(List<WaitingWork> lines, WaitingWork line) {
        if (line.number() > 0) {
            lines.add(line);
        }
    }

    private WaitingWork keying(ElectionId electionId) {
        int number = keying.waiting(electionId).size();
        return new WaitingWork(
                number, "Envelopes to key", "received, not keyed yet", "", false, "Key next envelope", "intake", "k");
    }

    private WaitingWork numbers(ElectionId electionId) {
        int number = (int) numbers.all(electionId).stream()
                .filter(marked -> !marked.isSettled())
                .count();
        return new WaitingWork(
                number,
                "Numbers to settle",
                "missing, or on several envelopes",
                "",
                false,
                "Settle numbers",
                "intake",
                null);
    }

    private static WaitingWork withYou(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.withYou(),
                "Cases assigned to me",
                "only you are working on them",
                by,
                false,
                "Continue review",
                "review",
                null);
    }

    private static WaitingWork toReview(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.in(CaseState.OPEN),
                "Envelopes to review",
                "not assigned yet",
                by,
                false,
                "Take next case",
                "review",
                "n");
    }

    private static WaitingWork secondReading(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.forYouToReadSecond(),
                "Proposals waiting for second review",
                "not counting your own",
                by,
                false,
                "Review next proposal",
                "review/second",
                null);
    }

    private WaitingWork research(ElectionLine election) {
        List<ResearchService.WaitingRequest> waiting = research.waiting(election.id());
        String since = waiting.stream()
                .findFirst()
                .map(oldest ->
                        "oldest from " + UsDates.near(LocalDateTime.ofInstant(oldest.askedAt(), election.zone())))
                .orElse("");
        return new WaitingWork(
                waiting.size(),
                "Research without a result",
                since,
                "",
                false,
                "Open Research",
                "review/research",
                null);
    }

    private WaitingWork withoutReceipt(ElectionId electionId) {
        int number = (int) ended.sentOn(electionId).stream()
                .filter(envelope -> !envelope.hasReceipt())
                .count();
        return new WaitingWork(
                number,
                number == 1 ? "Envelope sent on without receipt" : "Envelopes sent on without receipt",
                "the other county has not said that it has them",
                "",
                false,
                "Open Sent on",
                "review/sent-on",
                null);
    }

    private static WaitingWork toDecide(CaseCounts tally, String by) {
        return new WaitingWork(
                tally.in(CaseState.READY),
                "Envelopes ready to decide",
                "reviewed and proposed",
                by,
                false,
                "Open Board",
                "board",
                "b");
    }

    /** It may be somebody's second vote, or somebody's lost one: first of all that waits for a decider. */
    private WaitingWork contradicted(ElectionId electionId) {
        return new WaitingWork(
                followUps.open(electionId).size(),
                "Decisions contradicted by newer records",
                "decided, and the rules now say something else",
                "now",
                true,
                "Open list",
                "board/contradicted",
                null);
    }

    private WaitingWork toOpen(ElectionId electionId) {
        int number = release.waiting(electionId).size();
        return new WaitingWork(
                number, "Envelopes to open", "decided to count", "", false, "Open Release", "release", null);
    }

    private WaitingWork notices(ElectionId electionId) {
        DueCount due = notices.count(electionId);
        return new WaitingWork(
                due.all(),
                "Voters to notify",
                due.overdue() == 0 ? "cure notices and outcomes" : UsDates.count(due.overdue(), "letter") + " overdue",
                due.overdue() == 0 ? "today" : "now",
                due.overdue() > 0,
                "Open Notices",
                "notices",
                null);
    }

    private String beforeTheBoard(ElectionId electionId, LocalDateTime now) {
        if (board.sessions(electionId).stream().anyMatch(BoardSession::isOpen)) {
            return "the board is in session";
        }
        return clocks.nextSession(electionId, now)
                .map(moment -> "board meets in " + UsDates.left(now, moment.at()))
                .orElse("no session called yet");
    }
}
