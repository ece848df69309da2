package org.proviso.core.adjudication;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.rules.ResolvedRule;

/** One case under two sets of rules: whether it comes out differently, from what to what, and why. */
public record WhatIf(
        EnvelopeNumber envelopeNo,
        Recommendation before,
        Recommendation after,
        Recommendation outlookBefore,
        Recommendation outlookAfter,
        List<String> because) {

    /** Who "signs" a value that is only supposed. */
    public static final String SUPPOSED = "supposed";

    /** Empty where the case comes out the same: recommendation, outlook, reasons, contests and asks. */
    public static Optional<WhatIf> between(CaseReport before, CaseReport after) {
        if (before.settled().outcome().equals(after.settled().outcome())
                && before.outlook().outcome().equals(after.outlook().outcome())
                && before.asks().equals(after.asks())) {
            return Optional.empty();
        }
        return Optional.of(new WhatIf(
                before.envelope().envelopeNo(),
                before.recommendation(),
                after.recommendation(),
                before.outlook().outcome().recommendation(),
                after.outlook().outcome().recommendation(),
                because(before, after)));
    }

    /** The questions with a different answer, with the rules the new answer rests on. */
    private static List<String> because(CaseReport before, CaseReport after) {
        List<String> because = new ArrayList<>();
        List<AnsweredQuestion> was = before.outlook().answered();
        List<AnsweredQuestion> is = after.outlook().answered();
        for (int question = 0; question < was.size(); question++) {
            Answer old = was.get(question).answer();
            Answer now = is.get(question).answer();
            if (!says(old).equals(says(now))) {
                because.add(was.get(question).question().asks() + " " + says(old) + " changes to " + says(now)
                        + rests(now, old));
            }
        }
        if (because.isEmpty()) {
            because.add(
                    before.asks().equals(after.asks())
                            ? "An open question is now answered, or an answered one is now open."
                            : "The voter's time to cure changes.");
        }
        return List.copyOf(because);
    }

    private static String says(Answer answer) {
        return "\"" + answer.words() + "\""
                + (answer instanceof Answer.Defect defect
                        ? " (" + defect.consequence().words() + ")"
                        : "");
    }

    private static String rests(Answer now, Answer old) {
        List<String> rules = now.restsOn().stream()
                .filter(given -> !old.restsOn().contains(given))
                .map(WhatIf::rule)
                .toList();
        return rules.isEmpty() ? "." : ", under " + String.join(", ", rules) + ".";
    }

    private static String rule(ResolvedRule given) {
        return given.rule().key()
                + (SUPPOSED.equals(given.signedBy())
                        ? " (supposed value)"
                        : " (" + given.reference().words() + ")");
    }
}
