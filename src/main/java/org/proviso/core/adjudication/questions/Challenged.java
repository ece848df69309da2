package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Was the voter challenged, and how did it end? */
final class Challenged extends OneFactQuestion<ChallengeFact> {

    Challenged() {
        super("anything_else.challenge", QuestionHeading.ANYTHING_ELSE, "Was the voter challenged?", Fact.CHALLENGE);
    }

    @Override
    Answer answerFor(ChallengeFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> setting.clear("No");
            case OVERRULED -> setting.clear("The challenge was overruled");
            case SUSTAINED -> setting.defect(Reason.CHALLENGE_SUSTAINED);
            case UNDER_APPEAL -> setting.open("the challenge is under appeal");
            case PENDING ->
                setting.open(
                        "the challenge has not been heard yet",
                        setting.clear("Challenged; the burden is on the challenger"));
        };
    }
}
