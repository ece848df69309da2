package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Challenge;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Reason;

/** Was the voter challenged, and how did it end? */
final class Challenged extends Asked<Challenge> {

    Challenged() {
        super("anything_else.challenge", Heading.ANYTHING_ELSE, "Was the voter challenged?", Fact.CHALLENGE);
    }

    @Override
    Answer of(Challenge word, FactReader facts, Setting setting) {
        return switch (word) {
            case NONE -> setting.clear("No");
            case OVERRULED -> setting.clear("The challenge was overruled");
            case SUSTAINED -> setting.stands(Reason.CHALLENGE_SUSTAINED);
            case UNDER_APPEAL -> setting.open("the challenge is under appeal");
            case PENDING ->
                setting.open(
                        "the challenge has not been heard yet",
                        setting.clear("Challenged; the burden is on the challenger"));
        };
    }
}
