package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.EnvelopeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.StateRules;

/** Is the envelope sealed, and does it hold a provisional ballot? What is inside is known only at opening. */
final class EnvelopeCondition extends Asked<EnvelopeFact> {

    EnvelopeCondition() {
        super("envelope.condition", Heading.ENVELOPE, "Is the envelope sealed and intact?", Fact.ENVELOPE);
    }

    @Override
    Answer of(EnvelopeFact word, FactReader facts, Setting setting) {
        if (setting.pack().word(StateRules.PROVISIONAL_ISSUED).equals("not_issued")) {
            return setting.open(
                    "this state issues no provisional ballots; counsel must say what law this one was cast under",
                    StateRules.PROVISIONAL_ISSUED);
        }
        return switch (word) {
            case SEALED -> setting.clear("Yes");
            case TORN -> setting.clear("Yes; torn, to be noted at opening");
            case FEELS_EMPTY -> setting.clear("Yes; it feels empty, to be confirmed at opening");
            case UNSEALED -> setting.stands(Reason.ENVELOPE_NOT_SEALED);
            case WITHDRAWN -> setting.stands(Reason.WITHDRAWN);
            case SPOILED -> setting.stands(Reason.SPOILED);
            case REGULAR_BALLOT_INSIDE -> setting.stands(Reason.REGULAR_BALLOT_INSIDE);
        };
    }
}
