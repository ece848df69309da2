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
            case MARK_WITNESSED -> byMark("Yes, with a witnessed mark", setting);
            case SIGNED_LATER_IN_TIME -> setting.clear("Yes, after voting and in time");
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

    /** A mark without a witness; where no rule pack says what a mark needs, it needs a witness. */
    private static Answer markAlone(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.SIGNATURE_MARK);
        if (rule.isAbsent() || rule.word().equals("witness_needed")) {
            return setting.defect(Reason.MARK_NOT_WITNESSED);
        }
        return switch (rule.word()) {
            case "no_witness_needed" ->
                setting.clear("Yes, with a mark; no witness is required", StateRules.SIGNATURE_MARK);
            case "not_accepted" -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED, StateRules.SIGNATURE_MARK);
            default -> setting.ruleUnknown(StateRules.SIGNATURE_MARK);
        };
    }

    /** Another person signed; where no rule pack says what that means, a reviewer must check. */
    private static Answer byAttorney(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.POWER_OF_ATTORNEY);
        return switch (rule.word()) {
            case "accepted" -> setting.clear("Yes, under a power of attorney", StateRules.POWER_OF_ATTORNEY);
            case "not_accepted" -> setting.defect(Reason.AFFIRMATION_NOT_SIGNED, StateRules.POWER_OF_ATTORNEY);
            case "person_decides" ->
                setting.open(
                        "another person signed under a power of attorney; a reviewer must check it",
                        StateRules.POWER_OF_ATTORNEY);
            default -> setting.ruleUnknown(StateRules.POWER_OF_ATTORNEY);
        };
    }
}
