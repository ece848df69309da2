package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.EnvelopeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.StateRules;

/** Is the envelope sealed, and does it hold a provisional ballot? What is inside is known only at opening. */
final class EnvelopeCondition extends OneFactQuestion<EnvelopeFact> {

    EnvelopeCondition() {
        super("envelope.condition", QuestionHeading.ENVELOPE, "Is the envelope sealed and intact?", Fact.ENVELOPE);
    }

    @Override
    Answer answerFor(EnvelopeFact word, FactReader facts, QuestionContext setting) {
        if (setting.pack().word(StateRules.PROVISIONAL_ISSUED).equals("not_issued")) {
            return setting.open(
                    "this state issues no provisional ballots; counsel must say what law this one was cast under",
                    StateRules.PROVISIONAL_ISSUED);
        }
        return switch (word) {
            case SEALED -> setting.clear("Yes");
            case TORN -> setting.clear("Yes; torn, to be noted at opening");
            case FEELS_EMPTY -> setting.clear("Yes; it feels empty, to be confirmed at opening");
            case UNSEALED -> setting.defect(Reason.ENVELOPE_NOT_SEALED);
            case WITHDRAWN -> setting.defect(Reason.WITHDRAWN);
            case SPOILED -> setting.defect(Reason.SPOILED);
            case REGULAR_BALLOT_INSIDE -> setting.defect(Reason.REGULAR_BALLOT_INSIDE);
        };
    }
}
