package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.EntitlementFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Reason;

/** Does the registration entitle to every contest of the style? */
final class FullEntitlement extends Asked<EntitlementFact> {

    FullEntitlement() {
        super("ballot.entitlement", Heading.BALLOT, "May the voter vote every contest?", Fact.ENTITLEMENT);
    }

    @Override
    Answer of(EntitlementFact word, FactReader facts, Setting setting) {
        return word == EntitlementFact.FULL ? setting.clear("Yes") : setting.stands(Reason.FEDERAL_CONTESTS_ONLY);
    }
}
