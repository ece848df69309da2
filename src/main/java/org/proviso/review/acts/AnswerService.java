package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.AnswerRules;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.PollBookSeen;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.SignatureComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** What a person records of the facts of a case: it takes the place of what the files say, and is evidence itself. */
@Service
@Validated
public class AnswerService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final AnswerStore answers;
    private final CaseReassessment closing;
    private final AccessService access;
    private final Clock clock;

    AnswerService(
            CaseActSteps desk,
            CaseStore cases,
            AnswerStore answers,
            CaseReassessment closing,
            AccessService access,
            Clock clock) {
        this.desk = desk;
        this.cases = cases;
        this.answers = answers;
        this.closing = closing;
        this.access = access;
        this.clock = clock;
    }

    /** What persons recorded and has not been taken back, in the order given. */
    @Transactional(readOnly = true)
    public List<RecordedAnswer> standing(EnvelopeKey key) {
        return answers.standing(key);
    }

    /** Answers otherwise than the records, with a reason. */
    @Transactional
    public CaseActResult answer(@Valid RecordAnswer command) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        AnswerRules.check(command.fact(), command.words());
        EnvelopeCase one = desk.lock(command.key(), command.version());
        Optional<Refusal> refusal = workedOn(one, user).or(() -> AnswerRules.otherAct(command.fact(), command.words()));
        return refusal.isPresent()
                ? CaseActResult.Refused.because(refusal.get())
                : give(
                        one,
                        user,
                        AnswerKind.OTHERWISE,
                        command.fact(),
                        command.words(),
                        command.reason(),
                        command.receivedAt());
    }

    /** Takes back every standing answer on a fact: the records speak again. */
    @Transactional
    public CaseActResult withdrawAnswer(EnvelopeKey key, int version, Fact<?> fact) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        EnvelopeCase one = desk.lock(key, version);
        Optional<Refusal> refusal = workedOn(one, user);
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        int taken = answers.withdraw(key, fact);
        return closing.done(cases.save(one), user, "answer_taken_back", Map.of("answers", taken, "fact", fact.key()));
    }

    /** What the poll book of another location shows; until somebody looked, a check-in there stays open. */
    @Transactional
    public CaseActResult recordPollBook(@Valid PollBookSeen command) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        EnvelopeCase one = desk.lock(command.key(), command.version());
        Optional<Refusal> refusal = workedOn(one, user);
        CheckInFact word = command.voterSigned() ? CheckInFact.VOTED : CheckInFact.NOT_THEIRS;
        return refusal.isPresent()
                ? CaseActResult.Refused.because(refusal.get())
                : give(one, user, AnswerKind.POLL_BOOK_SEEN, Fact.CHECK_IN, Set.of(word), command.seen(), null);
    }

    /**
     * A look at the signature. One reviewer may accept it; a signature is different only when a second one, who does not
     * know of the first, finds it so too. The second needs not have the case.
     */
    @Transactional
    public CaseActResult recordSignatureComparison(@Valid SignatureComparison command) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        EnvelopeCase one = desk.lock(command.key(), command.version());
        Optional<RecordedAnswer> first = AnswerRules.firstLook(answers.standing(command.key()));
        Optional<Refusal> refusal = first.isPresent() ? notSecond(one, user, first.get()) : workedOn(one, user);
        if (refusal.isPresent()
                || (command.seen() == SignatureComparison.Finding.DIFFERS
                        && command.note().isBlank())) {
            return CaseActResult.Refused.because(refusal.orElseGet(
                    () -> Refusal.of(Why.NO_REASON, "Note what differs before the signature is said to differ.")));
        }
        AnswerKind kind = first.isPresent() ? AnswerKind.SECOND_SIGNATURE_LOOK : AnswerKind.FIRST_SIGNATURE_LOOK;
        FactWord word = AnswerRules.word(command.seen(), first.isPresent());
        return give(one, user, kind, Fact.SIGNATURE_COMPARISON, Set.of(word), command.note(), null);
    }

    /** Only somebody else looks a second time, of another party where the law says so. */
    private Optional<Refusal> notSecond(EnvelopeCase one, OfficeUser user, RecordedAnswer first) {
        if (first.by().equals(user.userName())) {
            return Optional.of(Refusal.of(Why.OWN_ACT, "Somebody else has to look a second time."));
        }
        boolean open = one.state() == CaseState.OPEN || one.state() == CaseState.IN_REVIEW;
        return desk.closed(one.key())
                .or(() -> closing.sameParty(one.key(), user, first.by()))
                .or(() -> open
                        ? Optional.empty()
                        : Optional.of(Refusal.of(
                                Why.NOT_IN_THIS_STATE,
                                "The case is " + one.state().spoken() + ".")));
    }

    private Optional<Refusal> workedOn(EnvelopeCase one, OfficeUser user) {
        return desk.closed(one.key()).or(() -> desk.notWith(one, user));
    }

    private CaseActResult give(
            EnvelopeCase one,
            OfficeUser user,
            AnswerKind kind,
            Fact<?> fact,
            Set<? extends FactWord> words,
            String reason,
            @Nullable LocalDateTime receivedAt) {
        answers.insert(
                one.key(),
                fact.key(),
                new RecordedAnswer(0, kind, fact, words, reason, receivedAt, user.userName(), clock.instant()));
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("fact", fact.key());
        payload.put("kind", kind.code());
        payload.put("reason", desk.hidden(one.key(), reason));
        payload.put("words", words.stream().map(Code::code).sorted().toList());
        if (receivedAt != null) {
            payload.put("received_at", receivedAt.toString());
        }
        return closing.done(cases.save(one), user, "answer_given", payload);
    }
}
