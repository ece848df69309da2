package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OrderFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Has a court ordered something about this envelope? An order to count or open is for the decider to enter. */
final class CourtOrdered extends OneFactQuestion<OrderFact> {

    CourtOrdered() {
        super(
                "anything_else.court_order",
                QuestionHeading.ANYTHING_ELSE,
                "Is there a court order about this envelope?",
                Fact.COURT_ORDER);
    }

    @Override
    Answer answerFor(OrderFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> setting.clear("None");
            case COUNT, OPEN, PRESERVE -> setting.clear("A court ordered: " + word.code() + "; the decider enters it");
            case HOLD -> setting.open("a court ordered this envelope to be held");
            case REJECT -> setting.defect(Reason.REJECTED_BY_ORDER);
        };
    }
}
