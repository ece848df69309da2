package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OtherEnvelope;
import org.proviso.core.rules.Reason;

/** Has the voter another provisional envelope? Envelopes of one person are decided together and one at most counts. */
final class AnotherEnvelope extends Asked<OtherEnvelope> {

    AnotherEnvelope() {
        super("already_voted.other_envelope", Heading.ALREADY_VOTED, "Another envelope?", Fact.OTHER_ENVELOPE);
    }

    @Override
    Answer of(OtherEnvelope word, FactReader facts, Setting setting) {
        return switch (word) {
            case NONE -> setting.clear("No other envelope");
            case NOT_COUNTED -> setting.clear("The other one does not count");
            case COUNTED -> setting.stands(Reason.OTHER_ENVELOPE_COUNTED);
            case LATER_PENDING ->
                setting.open(
                        "another envelope of this voter was cast later; they are decided together",
                        setting.clear("The one cast first"));
            case EARLIER_PENDING ->
                setting.open(
                        "another envelope of this voter was cast earlier; they are decided together",
                        setting.stands(Reason.OTHER_ENVELOPE_COUNTED));
        };
    }
}
