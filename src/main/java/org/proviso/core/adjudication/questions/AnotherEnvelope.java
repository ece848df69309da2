package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.StateRules;

/** Has the voter another provisional envelope? Envelopes of one person are decided together and one at most counts. */
final class AnotherEnvelope extends OneFactQuestion<OtherEnvelopeFact> {

    AnotherEnvelope() {
        super(
                "already_voted.other_envelope",
                QuestionHeading.ALREADY_VOTED,
                "Did the voter cast another envelope?",
                Fact.OTHER_ENVELOPE);
    }

    @Override
    Answer answerFor(OtherEnvelopeFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> setting.clear("No other envelope");
            case NOT_COUNTED -> setting.clear("The other envelope does not count");
            case COUNTED -> setting.defect(Reason.OTHER_ENVELOPE_COUNTED);
            case LATER_PENDING ->
                together(
                        "another envelope of this voter was cast later; they are decided together",
                        "This one was cast first",
                        true,
                        setting);
            case EARLIER_PENDING ->
                together(
                        "another envelope of this voter was cast earlier; they are decided together",
                        "This one was cast last",
                        false,
                        setting);
        };
    }

    /** The one cast first prevails, unless the law of the state says otherwise. */
    private static Answer together(String missing, String whichOne, boolean first, QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.TWO_ENVELOPES);
        if (rule.word().equals("person_decides")) {
            return setting.open(missing, StateRules.TWO_ENVELOPES);
        }
        if (!rule.isKnown() && !rule.isAbsent()) {
            return setting.ruleUnknown(StateRules.TWO_ENVELOPES);
        }
        boolean prevails = first != rule.word().equals("last_cast");
        return setting.open(
                missing, prevails ? setting.clear(whichOne) : setting.defect(Reason.OTHER_ENVELOPE_COUNTED));
    }
}
