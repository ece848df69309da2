package org.proviso.notices;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.util.Comparator;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.news.NoticeSentService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Takes back what was logged of a notice by mistake, with the reason; it stays readable, and nothing rests on it. */
@Service
@Validated
public class NoticeSlipService {

    private final NoticeStore notices;
    private final NoticeAttemptStore attempts;
    private final NoticeLogChecks checks;
    private final NoticeLedger record;
    private final DecisionService decisions;
    private final NoticeSentService told;
    private final AccessService access;
    private final ActDoor door;

    NoticeSlipService(
            NoticeStore notices,
            NoticeAttemptStore attempts,
            NoticeLogChecks checks,
            NoticeLedger record,
            DecisionService decisions,
            NoticeSentService told,
            AccessService access,
            ActDoor door) {
        this.notices = notices;
        this.attempts = attempts;
        this.checks = checks;
        this.record = record;
        this.decisions = decisions;
        this.told = told;
        this.access = access;
        this.door = door;
    }

    /**
     * An attempt to notify a voter, or its returned mail, that was logged by mistake, and why it is taken back; the version
     * is that of the notice as it was seen.
     */
    public record TakeBackAttempt(
            @NotNull EnvelopeKey key,
            @Positive int noticeNo,
            @PositiveOrZero int version,
            @Positive int attemptNo,
            @NotBlank @Size(max = 1000) String because) {}

    /** A notice and the attempt that was logged by mistake. */
    private record Slip(Notice notice, NoticeAttempt attempt) {}

    /** The notice with its case held, for whoever may print its letter, and the attempt. */
    private Slip held(TakeBackAttempt command) {
        told.hold(command.key());
        Notice notice = known(command.key(), command.noticeNo());
        access.demand(notice.kind().printing());
        Notice seen = notice.at(command.version());
        return attempts.find(seen, command.attemptNo())
                .map(attempt -> new Slip(seen, attempt))
                .orElseThrow(() -> new IllegalArgumentException("No attempt " + command.attemptNo() + " was logged."));
    }

    private Notice known(EnvelopeKey key, int number) {
        return notices.find(key, number)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The envelope " + key.envelopeNo() + " has no notice " + number + "."));
    }

    /**
     * Takes back an attempt that was logged by mistake: the earliest of those left decides; without one the notice is due
     * again, unless it is asked no more. A case that rests on an ask looks again.
     */
    @Transactional
    public ActResult<Notice> takeBackSent(@Valid TakeBackAttempt command) {
        ActDoor.Permitted clerk = door.demand(Permission.PRINT_CURE_LETTERS);
        String because = command.because().strip();
        return clerk.lock(() -> held(command))
                .refuse(slip -> checks.takeBack(slip.notice(), slip.attempt()))
                .save(slip -> takeBackSent(slip, because, clerk.user()))
                .record(slip -> record.takenBack(slip.notice(), slip.attempt(), because))
                .map(Slip::notice);
    }

    private Slip takeBackSent(Slip slip, String because, OfficeUser clerk) {
        Notice notice = slip.notice();
        attempts.takeBack(notice, slip.attempt(), because, clerk.userName());
        notices.unsent(
                notice,
                attempts.of(notice).stream()
                        .filter(attempt -> !attempt.isTakenBack())
                        .map(NoticeAttempt::sentAt)
                        .min(Comparator.naturalOrder())
                        .orElse(null));
        if (notice.kind() == NoticeKind.ASK) {
            told.takeBackNoticeSent(notice.key(), notice.asked(), slip.attempt().sentAt(), clerk.actor());
        }
        Notice now = known(notice.key(), notice.number());
        boolean setAside = notice.kind() == NoticeKind.OUTCOME
                && decisions.standing(notice.key()).filter(notice::isOf).isEmpty();
        if (setAside && now.isOpen()) {
            notices.withdraw(now);
        }
        return new Slip(known(notice.key(), notice.number()), slip.attempt());
    }

    /** Takes back that mail came back, which was logged by mistake. */
    @Transactional
    public ActResult<Notice> takeBackCameBack(@Valid TakeBackAttempt command) {
        ActDoor.Permitted clerk = door.demand(Permission.PRINT_CURE_LETTERS);
        String because = command.because().strip();
        return clerk.lock(() -> held(command))
                .refuse(slip -> checks.takeBackCameBack(slip.notice(), slip.attempt()))
                .save(slip -> {
                    attempts.takeBackCameBack(
                            slip.notice(), slip.attempt(), because, clerk.user().userName());
                    notices.unsent(slip.notice(), slip.notice().sentAt());
                    return new Slip(known(command.key(), command.noticeNo()), slip.attempt());
                })
                .record(slip -> record.cameBackTakenBack(slip.notice(), slip.attempt(), because))
                .map(Slip::notice);
    }
}
