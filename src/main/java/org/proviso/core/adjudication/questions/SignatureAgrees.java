package org.proviso.core.adjudication.questions;

import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Does the signature agree with those on file? One reviewer may accept; only two, independently, may find it different. */
final class SignatureAgrees extends OneFactQuestion<SignatureComparisonFact> {

    SignatureAgrees() {
        super(
                "signature.agrees",
                QuestionHeading.SIGNATURE,
                "Does it agree with those on file?",
                Fact.SIGNATURE_COMPARISON);
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(Fact.SIGNATURE_COMPARISON, Fact.VOTER_SIGNATURE);
    }

    /** Where the law does not compare signatures, the comparison does not matter. */
    @Override
    Answer ofUnknown(FactReader facts, QuestionContext setting) {
        boolean compared = setting.pack().isYes(Rules.SIGNATURE_COMPARED);
        return compared || !setting.pack().of(Rules.SIGNATURE_COMPARED).isKnown()
                ? super.ofUnknown(facts, setting)
                : setting.clear("Not compared here", Rules.SIGNATURE_COMPARED);
    }

    @Override
    Answer answerFor(SignatureComparisonFact word, FactReader facts, QuestionContext setting) {
        if (!setting.pack().of(Rules.SIGNATURE_COMPARED).isKnown()) {
            return setting.ruleUnknown(Rules.SIGNATURE_COMPARED);
        }
        if (!setting.pack().isYes(Rules.SIGNATURE_COMPARED)) {
            return setting.clear("Not compared here", Rules.SIGNATURE_COMPARED);
        }
        SignatureFact signed = facts.one(Fact.VOTER_SIGNATURE);
        if (signed == null) {
            return setting.notKnown("whether there is a signature to compare");
        }
        return hasSignature(signed) ? compared(word, setting) : new Answer.NotAsked("there is no signature to compare");
    }

    private static boolean hasSignature(SignatureFact signed) {
        return signed == SignatureFact.SIGNED || signed == SignatureFact.SIGNED_LATER_IN_TIME;
    }

    private static Answer compared(SignatureComparisonFact word, QuestionContext setting) {
        return switch (word) {
            case AGREES -> setting.clear("Agrees");
            case CONFIRMED_BY_VOTER -> setting.clear("Confirmed by the voter");
            case NOT_YET -> setting.open("the signature has not been compared yet", setting.clear("It agrees"));
            case VARIANT -> variant(setting);
            case DIFFERS_BY_ONE ->
                setting.open("one reviewer found the signature different; a second, independent comparison is due");
            case DIFFERS_BY_TWO -> setting.defect(Reason.SIGNATURE_DIFFERS, Rules.SIGNATURE_REJECTED_BY);
            case NO_EXEMPLAR -> noExemplar(setting);
        };
    }

    /** Where no rule pack says what a variant means, a reviewer decides; a variant alone is not a difference. */
    private static Answer variant(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.SIGNATURE_VARIANT);
        return switch (rule.word()) {
            case "accepted" -> setting.clear("A variant that the law accepts", StateRules.SIGNATURE_VARIANT);
            case "not_accepted" ->
                setting.open(
                        "it differs only by a variant that the law does not accept; only two reviewers may find it different",
                        StateRules.SIGNATURE_VARIANT);
            default -> setting.open("it differs only by a variant; a reviewer decides", StateRules.SIGNATURE_VARIANT);
        };
    }

    private static Answer noExemplar(QuestionContext setting) {
        return switch (setting.pack().word(Rules.SIGNATURE_NO_EXEMPLAR)) {
            case "accepted" -> setting.clear("None on file to compare with", Rules.SIGNATURE_NO_EXEMPLAR);
            case "person_decides" ->
                setting.open(
                        "there is no signature on file; a reviewer must look for one",
                        setting.clear("None on file", Rules.SIGNATURE_NO_EXEMPLAR));
            default -> setting.ruleUnknown(Rules.SIGNATURE_NO_EXEMPLAR);
        };
    }
}
