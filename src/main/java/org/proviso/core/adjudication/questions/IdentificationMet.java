package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Was the identification rule met? The federal floor asks it of first-time voters who registered by mail (52 USC 21083(b)). */
final class IdentificationMet extends OneFactQuestion<IdentificationFact> {

    IdentificationMet() {
        super("identification.met", QuestionHeading.IDENTIFICATION, "Was identification shown?", Fact.IDENTIFICATION);
    }

    @Override
    Answer answerFor(IdentificationFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case SHOWN -> setting.clear("Shown");
            case NOT_REQUIRED -> setting.clear("Not required", Rules.ID_REQUIRED_OF);
            case SUPPLIED_IN_TIME -> setting.clear("Provided after voting, in time");
            case EXCUSED -> setting.clear("Excused by declaration", Rules.DECLARATION_EXCUSES);
            case MISSING, SUPPLIED_LATE, NOT_SUFFICIENT, DECLARATION_NOT_ACCEPTED -> missing(setting);
            case DECLARATION_PENDING ->
                setting.open(
                        "the evidence supporting the declaration has not been checked yet", Rules.DECLARATION_EXCUSES);
        };
    }

    /** In some states a signature that agrees does what identification would; the signature is asked for by itself. */
    private static Answer missing(QuestionContext setting) {
        ResolvedRule instead = setting.pack().of(StateRules.SIGNATURE_FOR_ID);
        if (instead.isAbsent() || (instead.isKnown() && !instead.isYes())) {
            return setting.defect(Reason.NO_IDENTIFICATION, Rules.ID_REQUIRED_OF);
        }
        return instead.isYes() && setting.pack().isYes(Rules.SIGNATURE_COMPARED)
                ? setting.clear("A signature that agrees takes its place", StateRules.SIGNATURE_FOR_ID)
                : setting.ruleUnknown(instead.isYes() ? Rules.SIGNATURE_COMPARED : StateRules.SIGNATURE_FOR_ID);
    }
}
