package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.EntitlementFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Does the registration entitle to every contest of the style? */
final class FullEntitlement extends OneFactQuestion<EntitlementFact> {

    FullEntitlement() {
        super("ballot.entitlement", QuestionHeading.BALLOT, "May the voter vote every contest?", Fact.ENTITLEMENT);
    }

    @Override
    Answer answerFor(EntitlementFact word, FactReader facts, QuestionContext setting) {
        return word == EntitlementFact.FULL ? setting.clear("Yes") : setting.defect(Reason.FEDERAL_CONTESTS_ONLY);
    }
}
