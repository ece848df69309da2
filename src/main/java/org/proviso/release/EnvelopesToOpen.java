package org.proviso.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.ContradictedDecisions;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.mail.MailDeskWork;
import org.springframework.stereotype.Component;

/**
 * Finds the envelopes that are decided to count, that no batch has yet, and that neither a court, nor a newer record, nor
 * an answer that the mail-ballot desk still owes keeps closed.
 */
@Component
class EnvelopesToOpen {

    private final BatchStore batches;
    private final ReleaseChecks checks;
    private final DecisionService decisions;
    private final CaseService cases;
    private final ContradictedDecisions contradicted;
    private final MailDeskWork mailDesk;

    EnvelopesToOpen(
            BatchStore batches,
            ReleaseChecks checks,
            DecisionService decisions,
            CaseService cases,
            ContradictedDecisions contradicted,
            MailDeskWork mailDesk) {
        this.contradicted = contradicted;
        this.mailDesk = mailDesk;
        this.batches = batches;
        this.checks = checks;
        this.decisions = decisions;
        this.cases = cases;
    }

    /** By envelope number. */
    List<EnvelopeToOpen> of(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> decided = decisions.standing(electionId);
        Obstacles obstacles = obstacles(electionId);
        return inNoBatch(electionId)
                .filter(envelopeCase -> obstacles.to(numberOf(envelopeCase)).isEmpty())
                .map(envelopeCase -> toOpen(envelopeCase, decided))
                .toList();
    }

    /** Those that would be among them, were there not what keeps them closed, by envelope number. */
    List<KeptClosed> keptClosed(ElectionId electionId) {
        Obstacles obstacles = obstacles(electionId);
        return inNoBatch(electionId)
                .flatMap(envelopeCase -> obstacles.to(numberOf(envelopeCase)).stream()
                        .map(because -> new KeptClosed(envelopeCase.key(), because)))
                .toList();
    }

    private Stream<EnvelopeCase> inNoBatch(ElectionId electionId) {
        Set<EnvelopeNumber> taken = batches.inBatches(electionId);
        return cases.inState(electionId, CaseState.DECIDED).stream()
                .filter(envelopeCase ->
                        envelopeCase.countedPerson() != null && !taken.contains(numberOf(envelopeCase)));
    }

    private static EnvelopeNumber numberOf(EnvelopeCase envelopeCase) {
        return envelopeCase.key().envelopeNo();
    }

    private Obstacles obstacles(ElectionId electionId) {
        return new Obstacles(
                checks.keepingClosed(electionId), contradicted(electionId), mailDesk.keptClosed(electionId));
    }

    /** What keeps envelopes closed: courts, newer records, and what the mail desk still owes. */
    private record Obstacles(
            List<CourtOrder> orders,
            Map<EnvelopeNumber, ContradictedDecision> contradicted,
            Map<EnvelopeNumber, String> untold) {

        /** Whose word it takes, and for what. */
        Optional<String> to(EnvelopeNumber number) {
            return orders.stream()
                    .filter(order -> order.keepsClosed(number))
                    .findFirst()
                    .map(order -> order.court() + " ordered it. A supervisor records when the order ends.")
                    .or(() -> Optional.ofNullable(contradicted.get(number))
                            .map(found -> "A newer record contradicts its decision (the rules now say "
                                    + found.saysNow() + "). The decider lets the decision stand or reopens it."))
                    .or(() -> Optional.ofNullable(untold.get(number))
                            .map(words -> Character.toUpperCase(words.charAt(0)) + words.substring(1)
                                    + ". A reviewer or supervisor does that on the page Mail desk."));
        }
    }

    private static EnvelopeToOpen toOpen(EnvelopeCase envelopeCase, Map<EnvelopeNumber, Decision> decided) {
        return new EnvelopeToOpen(
                envelopeCase.key(),
                Objects.requireNonNull(
                        decided.get(envelopeCase.key().envelopeNo()), "a case that is decided has its decision"));
    }

    /** The envelopes of a batch that still count, by envelope number. */
    List<EnvelopeToOpen> in(Batch batch) {
        Map<EnvelopeNumber, Decision> decided = decisions.standing(batch.electionId());
        Set<EnvelopeNumber> numbers = Set.copyOf(batches.envelopes(batch.electionId(), batch.number()));
        return cases.inState(batch.electionId(), CaseState.DECIDED).stream()
                .filter(envelopeCase -> envelopeCase.countedPerson() != null
                        && numbers.contains(envelopeCase.key().envelopeNo()))
                .map(envelopeCase -> toOpen(envelopeCase, decided))
                .toList();
    }

    /** Why envelopes of a batch must stay closed, one refusal each that names the envelope and the way on. */
    List<Refusal> stopped(Batch batch) {
        Set<EnvelopeNumber> counting =
                in(batch).stream().map(envelope -> envelope.key().envelopeNo()).collect(Collectors.toSet());
        List<CourtOrder> closing = checks.keepingClosed(batch.electionId());
        Map<EnvelopeNumber, ContradictedDecision> doubtful = contradicted(batch.electionId());
        Map<EnvelopeNumber, String> untold = mailDesk.keptClosed(batch.electionId());
        List<Refusal> stopped = new ArrayList<>();
        for (EnvelopeNumber number : batches.envelopes(batch.electionId(), batch.number())) {
            closing.stream()
                    .filter(order -> order.keepsClosed(number))
                    .findFirst()
                    .map(order -> Refusal.of(
                            Why.HELD_BY_COURT,
                            "It must stay closed: " + order.court() + " ordered it. " + wayOn(number, batch)))
                    .or(() -> Refusal.when(
                            !counting.contains(number),
                            Why.NOT_IN_THIS_STATE,
                            "It must stay closed: it is not decided to count. " + wayOn(number, batch)))
                    .or(() -> Optional.ofNullable(doubtful.get(number)).map(found -> contradicted(found, batch)))
                    .or(() -> Optional.ofNullable(untold.get(number)).map(words -> untold(number, words, batch)))
                    .ifPresent(refusal -> stopped.add(refusal.about(number)));
        }
        return stopped;
    }

    private Map<EnvelopeNumber, ContradictedDecision> contradicted(ElectionId electionId) {
        return contradicted.open(electionId).stream()
                .filter(ContradictedDecision::mustStayClosed)
                .collect(Collectors.toMap(found -> found.key().envelopeNo(), Function.identity()));
    }

    private static Refusal contradicted(ContradictedDecision found, Batch batch) {
        EnvelopeNumber number = found.key().envelopeNo();
        return Refusal.of(
                Why.CONTRADICTED,
                "It must stay closed: a newer record contradicts its decision (the rules now say "
                        + found.saysNow() + "). The decider lets the decision stand or reopens it; or take " + number
                        + " out of batch " + batch.number() + ".");
    }

    private static Refusal untold(EnvelopeNumber number, String words, Batch batch) {
        return Refusal.of(
                Why.MAIL_DESK_NOT_ANSWERED,
                "It must stay closed: " + words + ". A reviewer or supervisor does that on the page of the mail"
                        + " desk; or take " + number + " out of batch " + batch.number() + ".");
    }

    private static String wayOn(EnvelopeNumber number, Batch batch) {
        return "Take " + number + " out of batch " + batch.number() + " first.";
    }
}
