package org.proviso.notices;

import jakarta.validation.Valid;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;
import org.proviso.election.RulesService;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.news.NoticeSentService;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Notices to voters: what is due and when, the letters, and the log of what was sent. An ask that ran out counts against
 * a voter only with its notice logged here as sent in time, where the law wants one. All moments are the county's.
 */
@Service
@Validated
public class NoticeService {

    private final NoticeStore notices;
    private final NoticeAttemptStore attempts;
    private final LetterComposer letters;
    private final AddresseeFinder addressees;
    private final NoticeLogChecks checks;
    private final NoticeLedger record;
    private final CountyClock clock;
    private final RulesService rules;
    private final IntakeService intake;
    private final DecisionService decisions;
    private final NoticeSentService told;
    private final AccessService access;

    NoticeService(
            NoticeStore notices,
            NoticeAttemptStore attempts,
            LetterComposer letters,
            AddresseeFinder addressees,
            NoticeLogChecks checks,
            NoticeLedger record,
            CountyClock clock,
            RulesService rules,
            IntakeService intake,
            DecisionService decisions,
            NoticeSentService told,
            AccessService access) {
        this.notices = notices;
        this.attempts = attempts;
        this.letters = letters;
        this.addressees = addressees;
        this.checks = checks;
        this.record = record;
        this.clock = clock;
        this.rules = rules;
        this.intake = intake;
        this.decisions = decisions;
        this.told = told;
        this.access = access;
    }

    /** How many notices whoever looks has still to send. */
    @Transactional(readOnly = true)
    public DueCount count(ElectionId electionId) {
        List<Notice> open = open(electionId, access.demand(Permission.PRINT_CURE_LETTERS));
        LocalDateTime now = clock.now(electionId);
        DeadlineBook book = rules.book(electionId);
        int overdue = (int)
                open.stream().filter(notice -> isOverdue(notice, now, book)).count();
        return new DueCount(open.size(), overdue);
    }

    private List<Notice> open(ElectionId electionId, OfficeUser user) {
        return notices.standing(electionId).stream()
                .filter(Notice::isOpen)
                .filter(notice -> notice.kind().printing().isOpenTo(user.roles()))
                .toList();
    }

    /** Notices still to be sent, the one due first at the head; those of decisions only for who may print them. */
    @Transactional(readOnly = true)
    public List<DueNotice> due(ElectionId electionId) {
        List<Notice> open = open(electionId, access.demand(Permission.PRINT_CURE_LETTERS));
        Set<EnvelopeNumber> numbers =
                open.stream().map(notice -> notice.key().envelopeNo()).collect(Collectors.toSet());
        Map<EnvelopeNumber, Envelope> envelopes = intake.envelopes(electionId, numbers).stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, Function.identity()));
        Map<EnvelopeNumber, Addressee> to = addressees.of(electionId, envelopes.values());
        LocalDateTime now = clock.now(electionId);
        DeadlineBook book = rules.book(electionId);
        return open.stream()
                .map(notice -> due(
                        notice,
                        Objects.requireNonNull(
                                envelopes.get(notice.key().envelopeNo()),
                                "a notice is about an envelope of the office"),
                        Objects.requireNonNull(
                                to.get(notice.key().envelopeNo()), "every envelope has somebody to write to"),
                        now,
                        book))
                .toList();
    }

    private static DueNotice due(Notice notice, Envelope envelope, Addressee to, LocalDateTime now, DeadlineBook book) {
        Optional<Deadline> until = notice.kind() == NoticeKind.ASK ? book.cure(notice.asked(), null) : Optional.empty();
        return new DueNotice(
                notice,
                until.map(Deadline::lastMoment).orElse(null),
                isOverdue(notice, now, book),
                until.filter(deadline -> deadline.hasPassed(now)).isPresent(),
                to.mailTo(),
                to.language(),
                envelope.affirmation().phone(),
                envelope.affirmation().email());
    }

    /** What is due at once is overdue when that day is over (common practice: the day it is found). */
    private static boolean isOverdue(Notice notice, LocalDateTime now, DeadlineBook book) {
        boolean dated = notice.kind() == NoticeKind.ASK
                && book.pack().deadline(Rule.notice(notice.asked())).isPresent();
        return dated
                ? now.isAfter(notice.dueAt())
                : now.toLocalDate().isAfter(notice.dueAt().toLocalDate());
    }

    /** Every notice of a case, withdrawn ones too, in the order in which they came up. */
    @Transactional(readOnly = true)
    public List<Notice> notices(EnvelopeKey key) {
        access.demand(Permission.PRINT_CURE_LETTERS);
        return notices.of(key);
    }

    /** Every attempt to send a notice, in the order logged. */
    @Transactional(readOnly = true)
    public List<NoticeAttempt> attempts(EnvelopeKey key, int noticeNo) {
        access.demand(Permission.PRINT_CURE_LETTERS);
        return attempts.of(demand(key, noticeNo));
    }

    /** The letter as it would go out now. Throws {@link IllegalArgumentException} where its decision was set aside. */
    @Transactional(readOnly = true)
    public Letter letter(EnvelopeKey key, int noticeNo) {
        access.demand(Permission.PRINT_CURE_LETTERS);
        Notice notice = demand(key, noticeNo);
        access.demand(notice.kind().printing());
        return letters.write(notice, clock.now(key.electionId()));
    }

    /** Logs that a voter was told; of several attempts the earliest decides. A case that rests on an ask looks again. */
    @Transactional
    public NoticeLogResult logSent(@Valid LogNoticeSent command) {
        OfficeUser user = access.demand(Permission.PRINT_CURE_LETTERS);
        told.hold(command.key());
        Notice notice = demand(command.key(), command.noticeNo(), command.version());
        access.demand(notice.kind().printing());
        Optional<Refusal> refusal = checks.sent(notice, command.sentAt());
        if (refusal.isPresent()) {
            return new NoticeLogResult.Refused(refusal.get());
        }
        Letter letter = letters.write(notice, command.sentAt());
        int attempt = attempts.insert(notice, command.channel(), command.sentAt(), letter.hash(), user.userName());
        notices.sent(notice, earliest(notice, command.sentAt()));
        if (notice.kind() == NoticeKind.ASK) {
            told.recordNoticeSent(notice.key(), notice.asked(), command.sentAt(), user.actor());
        }
        record.sent(notice, attempt, command, letter, user);
        return done(notice);
    }

    /** Logs that what was sent came back: a status, not a failure to notify. */
    @Transactional
    public NoticeLogResult logCameBack(@Valid LogReturnedMail command) {
        OfficeUser user = access.demand(Permission.PRINT_CURE_LETTERS);
        told.hold(command.key());
        Notice notice = demand(command.key(), command.noticeNo(), command.version());
        access.demand(notice.kind().printing());
        NoticeAttempt attempt = attempts.find(notice, command.attemptNo())
                .orElseThrow(() -> new IllegalArgumentException("No attempt " + command.attemptNo() + " was logged."));
        Optional<Refusal> refusal = checks.cameBack(notice, attempt, command.cameBackAt());
        if (refusal.isPresent()) {
            return new NoticeLogResult.Refused(refusal.get());
        }
        attempts.cameBack(notice, attempt.number(), command.cameBackAt());
        notices.sent(notice, earliest(notice, attempt.sentAt()));
        record.cameBack(notice, attempt, command.cameBackAt(), user);
        return done(notice);
    }

    /** Notices in figures, by voting location and apart for court-extended hours. */
    @Transactional(readOnly = true)
    public NoticeCounts counts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        Map<EnvelopeNumber, String> locations = intake.castEnvelopes(electionId).stream()
                .collect(Collectors.toMap(CastEnvelope::envelopeNo, CastEnvelope::votingLocation));
        return new NoticeSums(decisions.standing(electionId)).of(notices.standing(electionId), locations);
    }

    private static LocalDateTime earliest(Notice notice, LocalDateTime sentAt) {
        LocalDateTime before = notice.sentAt();
        return before != null && before.isBefore(sentAt) ? before : sentAt;
    }

    private Notice demand(EnvelopeKey key, int number) {
        return notices.find(key, number)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The envelope " + key.envelopeNo() + " has no notice " + number + "."));
    }

    private Notice demand(EnvelopeKey key, int number, int version) {
        Notice notice = demand(key, number);
        if (notice.version() != version) {
            throw new OptimisticLockingFailureException("The notice was changed since you saw it.");
        }
        return notice;
    }

    private NoticeLogResult done(Notice notice) {
        return new NoticeLogResult.Done(demand(notice.key(), notice.number()));
    }
}
