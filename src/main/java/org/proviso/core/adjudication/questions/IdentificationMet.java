package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.Identification;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

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
            case MISSING, SUPPLIED_LATE -> setting.stands(Reason.NO_IDENTIFICATION, Rules.ID_REQUIRED_OF);
        };
    }
}
