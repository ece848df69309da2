package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.EligibilityFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Is anything known against the right to vote? */
final class Eligible extends OneFactQuestion<EligibilityFact> {

    Eligible() {
        super(
                "anything_else.eligibility",
                QuestionHeading.ANYTHING_ELSE,
                "Is anything known against eligibility?",
                Fact.ELIGIBILITY);
    }

    @Override
    Answer answerFor(EligibilityFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NOTHING_KNOWN -> setting.clear("No, nothing known");
            case DIED_AFTER_VOTING -> setting.clear("The voter was alive when the ballot was cast");
            case DOUBTED -> setting.open("the right to vote is in doubt; the evidence must be weighed", Rules.BURDEN);
            case DOUBT_NOT_SHOWN ->
                setting.clear("In doubt, but the evidence does not support the doubt", Rules.BURDEN);
            case NOT_ENTITLED -> setting.defect(Reason.NOT_ENTITLED);
            case NOT_OF_AGE -> setting.defect(Reason.NOT_OF_AGE);
            case NOT_A_CITIZEN -> setting.defect(Reason.NOT_A_CITIZEN);
            case DISQUALIFIED -> setting.defect(Reason.DISQUALIFIED);
            case DIED_BEFORE_VOTING -> setting.defect(Reason.DIED_BEFORE_VOTING);
        };
    }
}
