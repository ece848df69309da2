package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.intake.ImageService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.SecondLooks;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.AnswerRules;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
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

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final AnswerStore answers;
    private final SecondLooks looks;
    private final LinkStore links;
    private final ImageService images;
    private final Clock clock;

    AnswerService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            AnswerStore answers,
            SecondLooks looks,
            LinkStore links,
            ImageService images,
            Clock clock) {
        this.links = links;
        this.images = images;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.answers = answers;
        this.looks = looks;
        this.clock = clock;
    }

    /** Answers otherwise than the records, with a reason. */
    @Transactional
    public ActResult<EnvelopeCase> answer(@Valid RecordAnswer command) {
        CaseDoor.Permitted permitted = door.demand(Permission.ANSWER_QUESTIONS);
        AnswerRules.check(command.fact(), command.words());
        LockedCase act = permitted
                .lock(command.key(), command.version())
                .withYou()
                .refuse(() -> AnswerRules.otherAct(command.fact(), command.words()));
        return give(
                act,
                AnswerKind.OTHERWISE,
                new Given(command.fact(), command.words(), command.reason(), command.receivedAt()));
    }

    /** Takes back every standing answer on a fact: the records speak again. */
    @Transactional
    public ActResult<EnvelopeCase> withdrawAnswer(EnvelopeKey key, int version, Fact<?> fact) {
        AtomicInteger taken = new AtomicInteger();
        return door.demand(Permission.ANSWER_QUESTIONS)
                .lock(key, version)
                .withYou()
                .refuse(() -> saidByTheMailDesk(key, fact))
                .save(seen -> {
                    taken.set(answers.withdraw(key, fact));
                    return cases.save(seen);
                })
                .assessAnew()
                .record("answer_taken_back", () -> Map.of("answers", taken.get(), "fact", fact.key()));
    }

    private Optional<Refusal> saidByTheMailDesk(EnvelopeKey key, Fact<?> fact) {
        return Refusal.when(
                answers.standing(key).stream()
                        .anyMatch(answer -> answer.kind() == AnswerKind.OTHER
                                && answer.fact().equals(fact)),
                Why.NOT_ANSWERED_THIS_WAY,
                "The mail desk answered this. Correct it on the page of the mail desk.");
    }

    /** What the poll book of another location shows; until somebody looked, a check-in there stays open. */
    @Transactional
    public ActResult<EnvelopeCase> recordPollBook(@Valid PollBookSeen command) {
        LockedCase act = door.demand(Permission.ANSWER_QUESTIONS)
                .lock(command.key(), command.version())
                .withYou();
        CheckInFact word = command.voterSigned() ? CheckInFact.VOTED : CheckInFact.NOT_THEIRS;
        return give(act, AnswerKind.POLL_BOOK_SEEN, new Given(Fact.CHECK_IN, Set.of(word), command.seen(), null));
    }

    /**
     * A look at the signature. One reviewer may accept it; a signature is different only when a second one, who does not
     * know of the first, finds it so too. The second needs not have the case. Whoever saw what the first one found has no
     * independent look any more: a difference they find is one by itself, and the second look is still due.
     */
    @Transactional
    public ActResult<EnvelopeCase> recordSignatureComparison(@Valid SignatureComparison command) {
        LockedCase act = door.demand(Permission.ANSWER_QUESTIONS).lock(command.key(), command.version());
        Optional<RecordedAnswer> first = AnswerRules.firstLook(answers.standing(command.key()));
        boolean informed = first.filter(found -> looks.isInformed(command.key(), found, act.user()))
                .isPresent();
        boolean second = first.isPresent() && !informed;
        first.ifPresent(found -> act.refuse(() -> notSecond(act, found)));
        if (!second) {
            act.withYou();
        }
        act.refuse(() -> nothingToCompare(command))
                .refuse(() -> Refusal.when(
                        command.seen() == SignatureComparison.Finding.DIFFERS
                                && command.note().isBlank(),
                        Why.NO_REASON,
                        "Note what differs before you record that the signature differs."));
        AnswerKind kind = second ? AnswerKind.SECOND_SIGNATURE_LOOK : AnswerKind.FIRST_SIGNATURE_LOOK;
        FactWord word = AnswerRules.word(command.seen(), second);
        return give(act, kind, new Given(Fact.SIGNATURE_COMPARISON, Set.of(word), command.note(), null, informed));
    }

    /**
     * A signature agrees or differs only where there is one to compare it with: on file here, or on a paper that is named. Where
     * the envelope has no scan either, whoever compares has the papers in hand.
     */
    private Optional<Refusal> nothingToCompare(SignatureComparison command) {
        if (command.seen() == SignatureComparison.Finding.NO_EXEMPLAR) {
            return Optional.empty();
        }
        EnvelopeKey key = command.key();
        VoterId voter = links.newest(key).map(Link::voterId).orElse(null);
        if (voter == null) {
            return Optional.of(Refusal.of(
                    Why.LINK_NOT_SETTLED,
                    "There is no voter to compare this signature with. Choose the voter first, or record that no"
                            + " signature is on file."));
        }
        return Refusal.when(
                command.note().isBlank()
                        && images.signature(key.electionId(), key.envelopeNo()).isPresent()
                        && images.exemplars(key.electionId(), voter).isEmpty(),
                Why.NO_REASON,
                "No signature of this voter is on file here. Note which paper you compared it with, or record that"
                        + " there is none.");
    }

    /** Only somebody else looks a second time, of another party where the law says so. */
    private Optional<Refusal> notSecond(LockedCase act, RecordedAnswer first) {
        CaseState state = act.seen().state();
        return Refusal.when(
                        AnswerRules.lookers(answers.standing(act.seen().key()))
                                .contains(act.user().userName()),
                        Why.OWN_ACT,
                        "A different reviewer has to do the second look.")
                .or(() -> sameParty(act, first.by()))
                .or(() -> Refusal.when(
                        state != CaseState.OPEN && state != CaseState.IN_REVIEW,
                        Why.NOT_IN_THIS_STATE,
                        "The case is " + state.spoken() + "."));
    }

    /** Where the law wants two parties to look, the second reviewer is of another one than the first. */
    private Optional<Refusal> sameParty(LockedCase act, UserName firstUserName) {
        return Refusal.when(
                looks.isOfSameParty(act.seen().key().electionId(), firstUserName, act.user()),
                Why.OWN_ACT,
                "A reviewer of another party has to do the second look.");
    }

    /** What is recorded of a fact, the stamp of the paper that it rests on, and whether another's finding was known before. */
    private record Given(
            Fact<?> fact,
            Set<? extends FactWord> words,
            String reason,
            @Nullable LocalDateTime receivedAt,
            boolean informed) {

        Given(Fact<?> fact, Set<? extends FactWord> words, String reason, @Nullable LocalDateTime receivedAt) {
            this(fact, words, reason, receivedAt, false);
        }
    }

    private ActResult<EnvelopeCase> give(LockedCase act, AnswerKind kind, Given given) {
        EnvelopeKey key = act.seen().key();
        return act.save(seen -> {
                    RecordedAnswer answer = new RecordedAnswer(
                            0,
                            kind,
                            given.fact(),
                            given.words(),
                            given.reason(),
                            given.receivedAt(),
                            act.user().userName(),
                            clock.instant());
                    answers.insert(key, given.fact().key(), answer);
                    return cases.save(seen);
                })
                .assessAnew()
                .record("answer_given", () -> payload(key, kind, given));
    }

    private Map<String, Object> payload(EnvelopeKey key, AnswerKind kind, Given given) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("fact", given.fact().key());
        payload.put("kind", kind.code());
        if (given.informed()) {
            payload.put("independent", false);
        }
        payload.put("reason", steps.hidden(key, given.reason()));
        payload.put("words", given.words().stream().map(Code::code).sorted().toList());
        if (given.receivedAt() != null) {
            payload.put("received_at", given.receivedAt().toString());
        }
        return payload;
    }
}
