package org.proviso.review.ui.desk;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Answered;
import org.proviso.core.adjudication.Assessment;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.review.Propose;
import org.proviso.review.SeenCase;

/** The proposal that follows the recommendation, with its reasons and legal references. */
final class Proposing {

    private Proposing() {}

    /** The outcome that may be proposed as recommended; empty while the rules recommend no decision. */
    static Optional<DecidedAs> recommended(Recommendation says) {
        return Stream.of(DecidedAs.values())
                .filter(as -> as.recommendation() == says)
                .findFirst();
    }

    static Propose of(SeenCase seen, DecidedAs as, Assessment settled) {
        boolean clear = as == DecidedAs.COUNT;
        return new Propose(
                seen.key(),
                seen.version(),
                as,
                clear ? java.util.List.of() : settled.outcome().reasons(),
                clear ? "" : reference(settled),
                "");
    }

    /** The legal references for the effect of each defect. */
    private static String reference(Assessment settled) {
        return settled.answered().stream()
                .map(Answered::answer)
                .flatMap(answer -> answer instanceof Answer.Defect defect ? places(defect) : Stream.empty())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static Stream<String> places(Answer.Defect defect) {
        Rule follows = Rule.consequence(defect.reason());
        return defect.restsOn().stream()
                .filter(given -> given.rule().equals(follows))
                .map(given -> given.reference().words());
    }

    /** The message after it is recorded. */
    static String done(String envelopeNo, DecidedAs as) {
        String then = as == DecidedAs.COUNT ? "It goes to the decider." : "Second review is next.";
        return "Envelope " + envelopeNo + " proposed: " + as.words() + ". " + then;
    }

    /** Reasons in a sentence. */
    static String words(Iterable<Reason> reasons) {
        StringBuilder words = new StringBuilder();
        reasons.forEach(reason -> words.append(words.isEmpty() ? "" : "; ").append(reason.words()));
        return words.toString();
    }
}
