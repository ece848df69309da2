package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.StateRules;

/** Did the voter sign the affirmation? 52 USC 21082(a)(2) asks for a written affirmation. */
final class AffirmationSigned extends OneFactQuestion<SignatureFact> {

    AffirmationSigned() {
        super("envelope.signed", QuestionHeading.ENVELOPE, "Did the voter sign the affirmation?", Fact.VOTER_SIGNATURE);
    }

    @Override
    Answer answerFor(SignatureFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case SIGNED -> setting.clear("Yes");
            case MARK_WITNESSED -> byMark("Yes, by a mark with a witness", setting);
            case SIGNED_LATER_IN_TIME -> setting.clear("Yes, afterward and in time");
            case MISSING, SIGNED_LATER_LATE -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED);
            case MARK_NOT_WITNESSED -> markAlone(setting);
            case POWER_OF_ATTORNEY -> byAttorney(setting);
        };
    }

    private static Answer byMark(String words, QuestionContext setting) {
        return switch (setting.pack().word(StateRules.SIGNATURE_MARK)) {
            case "not_accepted" -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED, StateRules.SIGNATURE_MARK);
            default -> setting.clear(words);
        };
    }

    /** A mark that nobody witnessed; where no pack says what a mark needs, it needs a witness. */
    private static Answer markAlone(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.SIGNATURE_MARK);
        if (rule.isAbsent() || rule.word().equals("witness_needed")) {
            return setting.defect(Reason.MARK_NOT_WITNESSED);
        }
        return switch (rule.word()) {
            case "no_witness_needed" ->
                setting.clear("Yes, by a mark, which needs no witness", StateRules.SIGNATURE_MARK);
            case "not_accepted" -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED, StateRules.SIGNATURE_MARK);
            default -> setting.ruleUnknown(StateRules.SIGNATURE_MARK);
        };
    }

    /** Somebody else signed; where no pack says what that means, a person must look. */
    private static Answer byAttorney(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.POWER_OF_ATTORNEY);
        return switch (rule.word()) {
            case "accepted" -> setting.clear("Yes, under a power of attorney", StateRules.POWER_OF_ATTORNEY);
            case "not_accepted" -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED, StateRules.POWER_OF_ATTORNEY);
            case "person_decides" ->
                setting.open(
                        "somebody else signed under a power of attorney; a person must look at it",
                        StateRules.POWER_OF_ATTORNEY);
            default -> setting.ruleUnknown(StateRules.POWER_OF_ATTORNEY);
        };
    }
}
