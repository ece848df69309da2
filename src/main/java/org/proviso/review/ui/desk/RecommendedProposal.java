package org.proviso.review.ui.desk;

import java.util.Optional;
import java.util.stream.Stream;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseVersion;
import org.proviso.review.ProposeOutcome;

/** The proposal that follows the recommendation, with its reasons and legal references. */
final class RecommendedProposal {

    private RecommendedProposal() {}

    /** The outcome that may be proposed as recommended; empty while the rules recommend no decision. */
    static Optional<DecisionOutcome> recommended(Recommendation says) {
        return Stream.of(DecisionOutcome.values())
                .filter(as -> as.recommendation() == says)
                .findFirst();
    }

    static ProposeOutcome of(CaseVersion seen, DecisionOutcome as, Assessment settled) {
        boolean clear = as == DecisionOutcome.COUNT;
        return new ProposeOutcome(
                seen.key(),
                seen.version(),
                as,
                clear ? java.util.List.of() : settled.outcome().reasons(),
                clear ? "" : String.join("; ", settled.consequences()),
                "");
    }

    /** The message after it is recorded. */
    static String done(EnvelopeNumber envelopeNo, DecisionOutcome as, boolean secondReviewIsNext) {
        String then = !secondReviewIsNext ? "It goes to the decider." : "Second review is next.";
        return "Envelope " + envelopeNo + " proposed: " + as.words() + ". " + then;
    }

    /** Reasons in a sentence. */
    static String words(Iterable<Reason> reasons) {
        StringBuilder words = new StringBuilder();
        reasons.forEach(reason -> words.append(words.isEmpty() ? "" : "; ").append(reason.words()));
        return words.toString();
    }
}
