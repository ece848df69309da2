package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/** Whether a decision is legal for one case. Each check is empty where nothing stands in the way. */
public final class DecisionChecks {

    private DecisionChecks() {}

    /** Everything that stands in the way of this decision at that moment, local to the county. */
    public static List<Refusal> all(
            DecisionOutcome as, CaseToDecide caseToDecide, DeadlineBook book, LocalDateTime at) {
        return Stream.of(
                        RuleChecks.gate(book, Rules.GATE_DECISION, at),
                        stillOpen(as, caseToDecide.settled().answered()),
                        grounds(as, caseToDecide.grounds()),
                        caseToDecide.against(as).flatMap(against -> referenceAgainst(against, caseToDecide.grounds())),
                        departure(as, caseToDecide),
                        ownActs(as, caseToDecide.acts()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Nothing counts while it is open who the voter is, or whether the voter already voted. */
    public static Optional<Refusal> stillOpen(DecisionOutcome as, Collection<AnsweredQuestion> answered) {
        if (as == DecisionOutcome.REJECT) {
            return Optional.empty();
        }
        return answered.stream()
                .filter(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Open)
                .map(answeredQuestion -> answeredQuestion.question().heading())
                .filter(heading -> heading == QuestionHeading.VOTER || heading == QuestionHeading.ALREADY_VOTED)
                .findFirst()
                .map(heading -> Refusal.of(
                        Why.QUESTION_STILL_OPEN,
                        "A ballot cannot count while this question is open: " + heading.asks()));
    }

    /** Whether a record says that the voter has voted already: a mail ballot, a poll book, another envelope that counts. */
    public static boolean isKnownToHaveVoted(Collection<AnsweredQuestion> answered) {
        return answered.stream()
                .anyMatch(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Defect
                        && answeredQuestion.question().heading() == QuestionHeading.ALREADY_VOTED);
    }

    /** No rejection without a reason and a legal reference. */
    public static Optional<Refusal> grounds(DecisionOutcome as, Grounds grounds) {
        if (as != DecisionOutcome.REJECT) {
            return Optional.empty();
        }
        if (grounds.reasons().isEmpty()) {
            return Optional.of(Refusal.of(Why.NO_REASON, "A rejection needs a reason."));
        }
        return grounds.legalReference().isBlank()
                ? Optional.of(Refusal.of(Why.NO_REFERENCE, "A rejection needs a legal reference."))
                : Optional.empty();
    }

    /** Nothing counts against the rules' answer without the place in the law. */
    public static Optional<Refusal> referenceAgainst(CountAgainstRules against, Grounds grounds) {
        return grounds.legalReference().isBlank()
                ? Optional.of(Refusal.at(
                        "legalReference", Why.NO_REFERENCE, against.words() + " To count it needs a legal reference."))
                : Optional.empty();
    }

    /** Nor without a reason. */
    public static Optional<Refusal> reasonAgainst(CountAgainstRules against, Grounds grounds) {
        return grounds.departsBecause().isBlank()
                ? Optional.of(Refusal.at(
                        "departsBecause",
                        Why.DEPARTURE_WITHOUT_REASON,
                        against.words() + " To count it needs a reason."))
                : Optional.empty();
    }

    /** A decision that departs from the recommendation needs a reason; deciding a case that is open or waiting is a departure. */
    public static Optional<Refusal> departure(DecisionOutcome as, Recommendation recommended, Grounds grounds) {
        boolean departs = recommended != as.recommendation();
        return departs && grounds.departsBecause().isBlank()
                ? Optional.of(Refusal.of(
                        Why.DEPARTURE_WITHOUT_REASON,
                        "The recommendation is " + recommended.words() + ". A decision to " + as.words()
                                + " needs a reason."))
                : Optional.empty();
    }

    /** A rejection takes a proposer, a different second reviewer, and a decider who is neither. */
    public static Optional<Refusal> ownActs(DecisionOutcome as, DecisionParticipants acts) {
        if (as != DecisionOutcome.REJECT) {
            return Optional.empty();
        }
        if (acts.proposedBy() == null) {
            return Optional.of(Refusal.of(Why.NOT_PROPOSED, "This rejection has not been proposed."));
        }
        if (acts.secondReadBy() == null) {
            return Optional.of(Refusal.of(Why.NOT_READ_TWICE, "This rejection has not had a second review."));
        }
        return twice(acts.proposedBy(), acts.secondReadBy(), acts.decidedBy())
                .map(
                        who -> Refusal.naming(
                                Why.OWN_ACT,
                                Set.of(who),
                                "Three different people must propose, review and decide a rejection. {who} acted more than once."));
    }

    /** More contests than the rules count depart from them too, under the same outcome. */
    private static Optional<Refusal> departure(DecisionOutcome as, CaseToDecide caseToDecide) {
        Recommendation recommended = caseToDecide.settled().outcome().recommendation();
        return departure(as, recommended, caseToDecide.grounds())
                .or(() -> caseToDecide.against(as).flatMap(against -> reasonAgainst(against, caseToDecide.grounds())));
    }

    private static Optional<UserName> twice(UserName proposedBy, UserName secondReadBy, Set<UserName> decidedBy) {
        return proposedBy.equals(secondReadBy)
                ? Optional.of(proposedBy)
                : Stream.of(proposedBy, secondReadBy)
                        .filter(decidedBy::contains)
                        .findFirst();
    }
}
