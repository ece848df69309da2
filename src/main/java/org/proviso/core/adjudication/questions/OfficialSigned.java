package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OfficialSignatureFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Did the poll official attest the affirmation? An omission of the office is rarely held against a voter. */
final class OfficialSigned extends OneFactQuestion<OfficialSignatureFact> {

    OfficialSigned() {
        super(
                "envelope.official_signed",
                QuestionHeading.ENVELOPE,
                "Did the poll worker sign?",
                Fact.OFFICIAL_SIGNATURE);
    }

    @Override
    Answer answerFor(OfficialSignatureFact word, FactReader facts, QuestionContext setting) {
        return word == OfficialSignatureFact.SIGNED
                ? setting.clear("Yes")
                : setting.defect(Reason.OFFICIAL_DID_NOT_SIGN);
    }
}
