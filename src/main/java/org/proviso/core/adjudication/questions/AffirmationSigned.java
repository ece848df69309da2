package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.rules.Reason;

/** Did the voter sign the affirmation? 52 USC 21082(a)(2) asks for a written affirmation. */
final class AffirmationSigned extends Asked<SignatureFact> {

    AffirmationSigned() {
        super("envelope.signed", Heading.ENVELOPE, "Did the voter sign the affirmation?", Fact.VOTER_SIGNATURE);
    }

    @Override
    Answer of(SignatureFact word, FactReader facts, Setting setting) {
        return switch (word) {
            case SIGNED -> setting.clear("Yes");
            case MARK_WITNESSED -> setting.clear("Yes, by a mark with a witness");
            case SIGNED_LATER_IN_TIME -> setting.clear("Yes, afterward and in time");
            case MISSING, SIGNED_LATER_LATE -> setting.stands(Reason.AFFIRMATION_NOT_SIGNED);
            case MARK_NOT_WITNESSED -> setting.stands(Reason.MARK_NOT_WITNESSED);
        };
    }
}
