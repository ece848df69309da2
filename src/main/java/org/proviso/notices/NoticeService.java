package org.proviso.notices;

import jakarta.validation.Valid;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;
import org.proviso.election.RulesService;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.news.NoticeSentService;
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
    private final ActDoor door;

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
            AccessService access,
            ActDoor door) {
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
        this.door = door;
    }

    /** How many notices whoever looks has still to send. */
    @Transactional(readOnly = true)
    public DueCount count(ElectionId electionId) {
        List<Notice> open = open(electionId, access.demand(Permission.PRINT_CURE_LETTERS));
        LocalDateTime now = clock.now(electionId);
        DeadlineBook book = rules.book(electionId);
        int overdue = (int)
                open.stream().filter(notice -> isOverdue(notice, now, book)).count();
        return new DueCount(
                open.size(),
                overdue,
                open.stream().map(Notice::dueAt).min(Comparator.naturalOrder()).orElse(null));
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
        return attempts.of(known(key, noticeNo));
    }

    /** The letter as it would go out now. Throws {@link IllegalArgumentException} where its decision was set aside. */
    @Transactional(readOnly = true)
    public Letter letter(EnvelopeKey key, int noticeNo) {
        access.demand(Permission.PRINT_CURE_LETTERS);
        Notice notice = known(key, noticeNo);
        access.demand(notice.kind().printing());
        return letters.write(notice, clock.now(key.electionId()));
    }

    /** A notice that was logged as sent: as it is now, at which attempt, by what letter. */
    private record Sent(Notice notice, int attempt, Letter letter) {}

    /** Logs that a voter was told; of several attempts the earliest decides. A case that rests on an ask looks again. */
    @Transactional
    public ActResult<Notice> logSent(@Valid LogNoticeSent command) {
        ActDoor.Permitted clerk = door.demand(Permission.PRINT_CURE_LETTERS);
        return clerk.lock(() -> held(command.key(), command.noticeNo(), command.version()))
                .refuse(notice -> checks.sent(notice, command.sentAt()))
                .save(notice -> sent(notice, command, clerk.user()))
                .record(sent -> record.sent(sent.notice(), sent.attempt(), command, sent.letter()))
                .map(Sent::notice);
    }

    private Sent sent(Notice notice, LogNoticeSent command, OfficeUser clerk) {
        Letter letter = letters.write(notice, command.sentAt());
        int attempt = attempts.insert(
                notice,
                command.channel(),
                command.sentAt(),
                letter.hash(),
                letters.toldUntil(notice, command.sentAt()),
                clerk.userName());
        notices.sent(notice, earliest(notice, command.sentAt()));
        if (notice.kind() == NoticeKind.ASK) {
            told.recordNoticeSent(notice.key(), notice.asked(), command.sentAt(), clerk.actor());
        }
        return new Sent(known(notice.key(), notice.number()), attempt, letter);
    }

    /** Logs that what was sent came back: a status, not a failure to notify. */
    @Transactional
    public ActResult<Notice> logCameBack(@Valid LogReturnedMail command) {
        return door.demand(Permission.PRINT_CURE_LETTERS)
                .lock(() -> attempt(held(command.key(), command.noticeNo(), command.version()), command.attemptNo()))
                .refuse(mail -> checks.cameBack(mail.notice(), mail.attempt(), command.cameBackAt()))
                .save(mail -> cameBack(mail, command.cameBackAt()))
                .record(mail -> record.cameBack(mail.notice(), mail.attempt(), command.cameBackAt()))
                .map(ReturnedMail::notice);
    }

    /** An attempt to tell a voter, of which the mail came back. */
    private record ReturnedMail(Notice notice, NoticeAttempt attempt) {}

    private ReturnedMail attempt(Notice notice, int attemptNo) {
        return attempts.find(notice, attemptNo)
                .map(attempt -> new ReturnedMail(notice, attempt))
                .orElseThrow(() -> new IllegalArgumentException("No attempt " + attemptNo + " was logged."));
    }

    private ReturnedMail cameBack(ReturnedMail mail, LocalDateTime at) {
        Notice notice = mail.notice();
        attempts.cameBack(notice, mail.attempt().number(), at);
        notices.sent(notice, earliest(notice, mail.attempt().sentAt()));
        return new ReturnedMail(known(notice.key(), notice.number()), mail.attempt());
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

    private Notice known(EnvelopeKey key, int number) {
        return notices.find(key, number)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The envelope " + key.envelopeNo() + " has no notice " + number + "."));
    }

    /** The notice with its case held, for whoever may print its letter. */
    private Notice held(EnvelopeKey key, int number, int version) {
        told.hold(key);
        Notice notice = known(key, number);
        access.demand(notice.kind().printing());
        return notice.at(version);
    }
}
