package org.proviso.review.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;

/** Which facts a person may answer otherwise, and how two looks at a signature follow each other. */
public final class AnswerRules {

    /** Facts with an act of their own, and what that act is. */
    private static final Map<Fact<?>, String> BY_OTHER_ACTS = Map.of(
            Fact.IDENTITY, "Confirm or choose the voter, or record a search.",
            Fact.CHECK_IN, "Record what the poll book shows.",
            Fact.SIGNATURE_COMPARISON, "Look at the signature.",
            Fact.OTHER_ENVELOPE, "Put one of the voter's envelopes forward.",
            Fact.COURT_ORDER, "Record the order.");

    private AnswerRules() {}

    /** Why a fact cannot be answered this way, if it cannot. */
    public static Optional<Refusal> otherAct(Fact<?> fact, Set<? extends FactWord> words) {
        String act = BY_OTHER_ACTS.get(fact);
        if (act == null && words.contains(RegistrationFact.NOT_FOUND_AFTER_SEARCH)) {
            act = "Record a search with its check list.";
        }
        return act == null ? Optional.empty() : Optional.of(Refusal.of(Why.NOT_ANSWERED_THIS_WAY, act));
    }

    /** What a person may answer. That a date is none is what the paper shows; a person says what to make of it. */
    public static List<FactWord> offered(Fact<?> fact) {
        return fact.words().stream()
                .map(word -> (FactWord) word)
                .filter(word -> word != FieldFact.NOT_A_DATE)
                .toList();
    }

    /** The words must be the fact's own; a fact that takes one word takes one. */
    public static void check(Fact<?> fact, Set<? extends FactWord> words) {
        boolean own = offered(fact).containsAll(words);
        if (!own || (!fact.severalMayHold() && words.size() != 1)) {
            throw new IllegalArgumentException("The fact " + fact.key() + " cannot be " + words + ".");
        }
    }

    /**
     * The answer that a second look follows: somebody found the signature different, and nobody looked since who did not know
     * of it.
     */
    public static Optional<RecordedAnswer> firstLook(List<RecordedAnswer> standing) {
        return last(standing)
                .filter(AnswerRules::isDifferent)
                .flatMap(last ->
                        standing.stream().filter(AnswerRules::isDifferent).findFirst());
    }

    private static boolean isDifferent(RecordedAnswer answer) {
        return answer.words().contains(SignatureComparisonFact.DIFFERS_BY_ONE);
    }

    /** Everybody whose look at the signature stands: none of them looks again. */
    public static Set<UserName> lookers(List<RecordedAnswer> standing) {
        return standing.stream()
                .filter(answer -> answer.fact().equals(Fact.SIGNATURE_COMPARISON))
                .map(RecordedAnswer::by)
                .collect(Collectors.toSet());
    }

    static Optional<RecordedAnswer> last(List<RecordedAnswer> standing) {
        return standing.stream()
                .filter(answer -> answer.fact().equals(Fact.SIGNATURE_COMPARISON))
                .reduce((earlier, later) -> later);
    }

    /** What a look means by itself, or after somebody else found the signature different. */
    public static SignatureComparisonFact word(SignatureComparison.Finding seen, boolean second) {
        return switch (seen) {
            case AGREES -> SignatureComparisonFact.AGREES;
            case NO_EXEMPLAR -> SignatureComparisonFact.NO_EXEMPLAR;
            case DIFFERS -> second ? SignatureComparisonFact.DIFFERS_BY_TWO : SignatureComparisonFact.DIFFERS_BY_ONE;
        };
    }
}
