package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OfficialSignature;
import org.proviso.core.rules.Reason;

/** Did the poll official attest the affirmation? An omission of the office is rarely held against a voter. */
final class OfficialSigned extends Asked<OfficialSignature> {

    OfficialSigned() {
        super("envelope.official_signed", Heading.ENVELOPE, "Did the poll worker sign?", Fact.OFFICIAL_SIGNATURE);
    }

    @Override
    Answer of(OfficialSignature word, FactReader facts, Setting setting) {
        return word == OfficialSignature.SIGNED ? setting.clear("Yes") : setting.stands(Reason.OFFICIAL_DID_NOT_SIGN);
    }
}
