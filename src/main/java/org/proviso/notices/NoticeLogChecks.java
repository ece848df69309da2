package org.proviso.notices;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Whether a notice can have gone out at the moment that somebody logs. */
@Component
class NoticeLogChecks {

    /** As the commands name their moments. */
    private static final String SENT = "sentAt";

    private static final String CAME_BACK = "cameBackAt";

    private final ElectionService elections;
    private final IntakeService intake;
    private final DecisionService decisions;
    private final CountyClock clock;

    NoticeLogChecks(ElectionService elections, IntakeService intake, DecisionService decisions, CountyClock clock) {
        this.elections = elections;
        this.intake = intake;
        this.decisions = decisions;
        this.clock = clock;
    }

    Optional<Refusal> sent(Notice notice, LocalDateTime sentAt) {
        return later(notice, SENT, sentAt)
                .or(() -> notice.kind() == NoticeKind.ASK ? ask(notice, sentAt) : outcome(notice, sentAt));
    }

    /** What went out of an ask may be taken back until the election is closed; of an outcome always, as it may be logged. */
    Optional<Refusal> takeBack(Notice notice, NoticeAttempt attempt) {
        return open(notice)
                .or(() -> Refusal.when(
                        attempt.isTakenBack(), Why.NOT_IN_THIS_STATE, "This attempt was taken back already."));
    }

    /** Only what is logged is taken back. */
    Optional<Refusal> takeBackCameBack(Notice notice, NoticeAttempt attempt) {
        return takeBack(notice, attempt)
                .or(() -> Refusal.when(
                        attempt.cameBackAt() == null, Why.NOT_IN_THIS_STATE, "This mail is not logged as returned."));
    }

    private Optional<Refusal> open(Notice notice) {
        return notice.kind() == NoticeKind.ASK ? elections.closed(notice.key().electionId()) : Optional.empty();
    }

    Optional<Refusal> cameBack(Notice notice, NoticeAttempt attempt, LocalDateTime at) {
        if (attempt.isTakenBack()) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "This attempt was taken back."));
        }
        if (attempt.cameBackAt() != null) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "This mail is logged as returned already."));
        }
        return at.isBefore(attempt.sentAt())
                ? no(CAME_BACK, "Mail cannot come back before it was sent.")
                : later(notice, CAME_BACK, at);
    }

    private Optional<Refusal> later(Notice notice, String field, LocalDateTime moment) {
        LocalDateTime now = clock.now(notice.key().electionId());
        return moment.isAfter(now)
                ? no(field, DateWords.moment(moment) + " is in the future. It is now " + DateWords.moment(now) + ".")
                : Optional.empty();
    }

    /** A poll worker may tell the voter at the table, before the office found anything; never before the ballot was cast. */
    private Optional<Refusal> ask(Notice notice, LocalDateTime sentAt) {
        ElectionId electionId = notice.key().electionId();
        Optional<Refusal> closed = elections.closed(electionId);
        if (closed.isPresent()) {
            return closed;
        }
        return intake.envelope(electionId, notice.key().envelopeNo())
                .map(envelope -> envelope.cast().at())
                .filter(sentAt::isBefore)
                .flatMap(cast -> no(SENT, "The ballot was not cast until " + DateWords.moment(cast) + "."));
    }

    private Optional<Refusal> outcome(Notice notice, LocalDateTime sentAt) {
        Optional<Decision> decision = decisions.standing(notice.key()).filter(notice::isOf);
        if (decision.isEmpty()) {
            return Optional.of(
                    Refusal.of(Why.NOT_IN_THIS_STATE, "The decision was set aside. Do not send its letter."));
        }
        LocalDateTime decided =
                clock.at(notice.key().electionId(), decision.get().decidedAt());
        return sentAt.isBefore(decided.truncatedTo(ChronoUnit.MINUTES))
                ? no(SENT, "The case was not decided until " + DateWords.moment(decided) + ".")
                : Optional.empty();
    }

    private static Optional<Refusal> no(String field, String words) {
        return Optional.of(Refusal.at(field, Why.MOMENT_NOT_POSSIBLE, words));
    }
}
