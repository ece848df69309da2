package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Eligibility;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Is anything known against the right to vote? */
final class Eligible extends Asked<Eligibility> {

    Eligible() {
        super(
                "anything_else.eligibility",
                Heading.ANYTHING_ELSE,
                "Is anything known against eligibility?",
                Fact.ELIGIBILITY);
    }

    @Override
    Answer of(Eligibility word, FactReader facts, Setting setting) {
        return switch (word) {
            case NOTHING_KNOWN -> setting.clear("No, nothing known");
            case DIED_AFTER_VOTING -> setting.clear("The voter was alive when the ballot was cast");
            case DOUBTED -> setting.open("the right to vote is in doubt; the evidence must be weighed", Rules.BURDEN);
            case DOUBT_NOT_SHOWN ->
                setting.clear("In doubt, but the evidence does not support the doubt", Rules.BURDEN);
            case NOT_ENTITLED -> setting.stands(Reason.NOT_ENTITLED);
            case NOT_OF_AGE -> setting.stands(Reason.NOT_OF_AGE);
            case NOT_A_CITIZEN -> setting.stands(Reason.NOT_A_CITIZEN);
            case DISQUALIFIED -> setting.stands(Reason.DISQUALIFIED);
            case DIED_BEFORE_VOTING -> setting.stands(Reason.DIED_BEFORE_VOTING);
        };
    }
}
