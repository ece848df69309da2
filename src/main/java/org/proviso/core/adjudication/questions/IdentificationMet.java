package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.Identification;
import org.proviso.core.rules.Given;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Was the identification rule met? The federal floor asks it of first-time voters who registered by mail (52 USC 21083(b)). */
final class IdentificationMet extends Asked<Identification> {

    IdentificationMet() {
        super("identification.met", Heading.IDENTIFICATION, "Was identification shown?", Fact.IDENTIFICATION);
    }

    @Override
    Answer of(Identification word, FactReader facts, Setting setting) {
        return switch (word) {
            case SHOWN -> setting.clear("Shown");
            case NOT_REQUIRED -> setting.clear("Not required", Rules.ID_REQUIRED_OF);
            case SUPPLIED_IN_TIME -> setting.clear("Brought afterward, in time");
            case EXCUSED -> setting.clear("Excused by declaration", Rules.DECLARATION_EXCUSES);
            case MISSING, SUPPLIED_LATE, NOT_SUFFICIENT, DECLARATION_NOT_ACCEPTED -> missing(setting);
            case DECLARATION_PENDING ->
                setting.open("what must bear out the declaration is not checked yet", Rules.DECLARATION_EXCUSES);
        };
    }

    /** In some states a signature that agrees does what identification would; the signature is asked for by itself. */
    private static Answer missing(Setting setting) {
        Given instead = setting.pack().of(StateRules.SIGNATURE_FOR_ID);
        if (instead.isAbsent() || (instead.isKnown() && !instead.isYes())) {
            return setting.stands(Reason.NO_IDENTIFICATION, Rules.ID_REQUIRED_OF);
        }
        return instead.isYes() && setting.pack().isYes(Rules.SIGNATURE_COMPARED)
                ? setting.clear("The signature takes its place", StateRules.SIGNATURE_FOR_ID)
                : setting.ruleUnknown(instead.isYes() ? Rules.SIGNATURE_COMPARED : StateRules.SIGNATURE_FOR_ID);
    }
}
