package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Answered;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.deciding.Refusal.Why;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/** Whether a decision is legal for one case. Each check is empty where nothing stands in the way. */
public final class DecisionChecks {

    private DecisionChecks() {}

    /** Everything that stands in the way of this decision at that moment, local to the county. */
    public static List<Refusal> all(DecidedAs as, CaseToDecide one, DeadlineBook book, LocalDateTime at) {
        return Stream.of(
                        RuleChecks.gate(book, Rules.GATE_DECISION, at),
                        stillOpen(as, one.settled().answered()),
                        grounds(as, one.grounds()),
                        departure(as, one.settled().outcome().recommendation(), one.grounds()),
                        ownActs(as, one.acts()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Nothing counts while it is open who the voter is, or whether the voter already voted. */
    public static Optional<Refusal> stillOpen(DecidedAs as, Collection<Answered> answered) {
        if (as == DecidedAs.REJECT) {
            return Optional.empty();
        }
        return answered.stream()
                .filter(one -> one.answer() instanceof Answer.Open)
                .map(one -> one.question().heading())
                .filter(heading -> heading == Heading.VOTER || heading == Heading.ALREADY_VOTED)
                .findFirst()
                .map(heading ->
                        Refusal.of(Why.QUESTION_STILL_OPEN, "Nothing counts while this is open: " + heading.asks()));
    }

    /** No rejection without its reason and the place in the law. */
    public static Optional<Refusal> grounds(DecidedAs as, Grounds grounds) {
        if (as != DecidedAs.REJECT) {
            return Optional.empty();
        }
        if (grounds.reasons().isEmpty()) {
            return Optional.of(Refusal.of(Why.NO_REASON, "A rejection needs a reason."));
        }
        return grounds.legalReference().isBlank()
                ? Optional.of(Refusal.of(Why.NO_REFERENCE, "A rejection needs its place in the law."))
                : Optional.empty();
    }

    /** Who decides otherwise than recommended says why; deciding what is still open or waits is deciding otherwise. */
    public static Optional<Refusal> departure(DecidedAs as, Recommendation recommended, Grounds grounds) {
        boolean departs = recommended != as.recommendation();
        return departs && grounds.departsBecause().isBlank()
                ? Optional.of(Refusal.of(
                        Why.DEPARTURE_WITHOUT_REASON,
                        "The recommendation is " + recommended.words() + ": to " + as.words() + " needs a reason."))
                : Optional.empty();
    }

    /** A rejection takes a proposer, another who reads it again, and a decider who is neither. */
    public static Optional<Refusal> ownActs(DecidedAs as, Acts acts) {
        if (as != DecidedAs.REJECT) {
            return Optional.empty();
        }
        if (acts.proposedBy() == null) {
            return Optional.of(Refusal.of(Why.NOT_PROPOSED, "Nobody has proposed this rejection."));
        }
        if (acts.secondReadBy() == null) {
            return Optional.of(Refusal.of(Why.NOT_READ_TWICE, "Nobody has read this rejection a second time."));
        }
        return twice(acts.proposedBy(), acts.secondReadBy(), acts.decidedBy())
                .map(who -> Refusal.of(Why.OWN_ACT, "A rejection may pass the same hands only once: " + who + "."));
    }

    private static Optional<String> twice(String proposedBy, String secondReadBy, Set<String> decidedBy) {
        return proposedBy.equals(secondReadBy)
                ? Optional.of(proposedBy)
                : Stream.of(proposedBy, secondReadBy)
                        .filter(decidedBy::contains)
                        .findFirst();
    }
}
