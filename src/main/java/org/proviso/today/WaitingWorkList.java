package org.proviso.today;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.release.EnvelopeToOpen;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.counts.CaseCounts;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.ends.SentOnEnvelope;
import org.proviso.review.mail.MailListService;
import org.proviso.review.queue.WaitingSince;
import org.proviso.review.queue.WaitingSinceService;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.stereotype.Component;

/** What waits for the signed-in person and no one else: limited to their roles, the oldest first. */
@Component
class WaitingWorkList {

    /** A contradicted decision may be somebody's second vote or somebody's lost one, so it stands first of all. */
    private static final Comparator<WaitingWork> OLDEST_FIRST = Comparator.comparing(
                    (WaitingWork line) -> !line.path().equals("board/contradicted"))
            .thenComparing(line -> Objects.requireNonNullElse(line.since(), Instant.MAX));

    private final AccessService access;
    private final IntakeWorkList intake;
    private final ReleaseService release;
    private final FollowUpService followUps;
    private final EndedCaseService ended;
    private final ResearchService research;
    private final WaitingSinceService ages;
    private final MailListService mailLists;
    private final SupervisorWorkList supervisors;
    private final BoardService board;

    WaitingWorkList(
            AccessService access,
            IntakeWorkList intake,
            ReleaseService release,
            FollowUpService followUps,
            EndedCaseService ended,
            ResearchService research,
            WaitingSinceService ages,
            MailListService mailLists,
            SupervisorWorkList supervisors,
            BoardService board) {
        this.board = board;
        this.access = access;
        this.intake = intake;
        this.release = release;
        this.followUps = followUps;
        this.ended = ended;
        this.research = research;
        this.ages = ages;
        this.mailLists = mailLists;
        this.supervisors = supervisors;
    }

    List<WaitingWork> of(ElectionLine election, CaseCounts tally, OutOfBalance.Found found) {
        ElectionId electionId = election.id();
        WaitingSince since = ages.of(electionId);
        List<WaitingWork> lines = new ArrayList<>();
        if (access.isPermitted(Permission.FOLLOW_UP)) {
            lines.add(contradicted(electionId));
        }
        lines.addAll(intake.of(election, since, found));
        if (access.isPermitted(Permission.PROPOSE)) {
            lines.add(withYou(tally, since));
            lines.add(toReview(tally, since));
            lines.add(secondReading(tally, since));
            lines.add(withoutReceipt(electionId));
            lines.add(research(election));
        }
        if (access.isPermitted(Permission.TELL_MAIL_DESK)) {
            lines.add(mailDesk(electionId));
        }
        if (access.isPermitted(Permission.VOTE)) {
            lines.add(toDecide(tally, since));
        }
        if (access.isPermitted(Permission.KEEP_RECORD) && !access.isPermitted(Permission.VOTE)) {
            lines.add(toRecord(electionId));
        }
        if (access.isPermitted(Permission.OPEN_ENVELOPES)) {
            lines.add(toOpen(electionId));
        }
        lines.addAll(supervisors.of(election, since));
        return lines.stream()
                .filter(line -> line.number() > 0)
                .sorted(OLDEST_FIRST)
                .toList();
    }

    private static WaitingWork withYou(CaseCounts tally, WaitingSince since) {
        return WaitingWork.of(
                        tally.withYou(),
                        "Cases assigned to me",
                        "only you are working on them",
                        "Continue review",
                        "review")
                .since(since.withYou());
    }

    private static WaitingWork toReview(CaseCounts tally, WaitingSince since) {
        return WaitingWork.of(
                        tally.in(CaseState.OPEN), "Envelopes to review", "not assigned yet", "Take next case", "review")
                .since(since.in(CaseState.OPEN).orElse(null))
                .withKey("n");
    }

    private static WaitingWork secondReading(CaseCounts tally, WaitingSince since) {
        return WaitingWork.of(
                        tally.forYouToReadSecond(),
                        "Proposals waiting for second review",
                        "not counting your own",
                        "Review next proposal",
                        "review/second")
                .since(since.forYouToReadSecond());
    }

    private WaitingWork research(ElectionLine election) {
        List<ResearchService.WaitingRequest> waiting = research.waiting(election.id());
        return WaitingWork.of(
                        waiting.size(),
                        "Research without a result",
                        "asked of other offices, not answered",
                        "Open Research",
                        "review/research")
                .since(oldest(waiting.stream()
                        .map(ResearchService.WaitingRequest::askedAt)
                        .toList()));
    }

    private WaitingWork withoutReceipt(ElectionId electionId) {
        List<SentOnEnvelope> waiting = ended.sentOn(electionId).stream()
                .filter(envelope -> !envelope.hasReceipt())
                .toList();
        return WaitingWork.of(
                        waiting.size(),
                        waiting.size() == 1 ? "Envelope sent on without receipt" : "Envelopes sent on without receipt",
                        "the other county has not said that it has them",
                        "Open Sent on",
                        "review/sent-on")
                .since(oldest(waiting.stream()
                        .map(SentOnEnvelope::sentAt)
                        .filter(Objects::nonNull)
                        .toList()));
    }

    private static WaitingWork toDecide(CaseCounts tally, WaitingSince since) {
        return WaitingWork.of(
                        tally.in(CaseState.READY),
                        "Envelopes ready to decide",
                        "reviewed and proposed",
                        "Open Board",
                        "board")
                .since(since.in(CaseState.READY).orElse(null))
                .withKey("b");
    }

    /** A secretary has no other work: sessions that are not closed, the open one or the next called first. */
    private WaitingWork toRecord(ElectionId electionId) {
        List<BoardSession> ahead = board.sessions(electionId).stream()
                .filter(session -> session.closedAt() == null)
                .sorted(Comparator.comparing((BoardSession session) -> !session.isOpen())
                        .thenComparing(BoardSession::calledFor))
                .toList();
        return WaitingWork.of(
                ahead.size(),
                ahead.size() == 1 ? "Session to keep the record of" : "Sessions to keep the record of",
                "attendance, motions, votes said aloud",
                "Open record",
                ahead.isEmpty() ? "board" : "board/record/" + ahead.get(0).key().sessionNo());
    }

    private WaitingWork mailDesk(ElectionId electionId) {
        int number = mailLists.open(electionId);
        return WaitingWork.of(
                number,
                number == 1 ? "Line for the mail desk" : "Lines for the mail desk",
                "not sent or not answered; envelopes that count stay closed until then",
                "Open Mail desk",
                "review/mail-desk");
    }

    private WaitingWork contradicted(ElectionId electionId) {
        return WaitingWork.of(
                        followUps.open(electionId).size(),
                        "Decisions contradicted by newer records",
                        "decided, and the rules now say something else",
                        "Open list",
                        "board/contradicted")
                .late(true);
    }

    private WaitingWork toOpen(ElectionId electionId) {
        List<EnvelopeToOpen> waiting = release.waiting(electionId);
        return WaitingWork.of(waiting.size(), "Envelopes to open", "decided to count", "Open Release", "release")
                .since(oldest(waiting.stream()
                        .map(envelope -> envelope.decision().decidedAt())
                        .toList()));
    }

    static @Nullable Instant oldest(List<Instant> moments) {
        return moments.stream().min(Comparator.naturalOrder()).orElse(null);
    }
}
