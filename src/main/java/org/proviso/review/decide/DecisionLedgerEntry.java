package org.proviso.review.decide;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseKey;
import org.proviso.review.Decision;
import org.springframework.stereotype.Component;

/**
 * What the ledger has of a decision: all its row has, so that neither can be changed alone. Free text is hidden, and so
 * is the style the voter should have had, which says where somebody lives, and what a court's order is called.
 */
@Component
class DecisionLedgerEntry {

    private final CaseActSteps desk;

    DecisionLedgerEntry(CaseActSteps desk) {
        this.desk = desk;
    }

    Map<String, Object> of(CaseKey key, Decision decision) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("as", decision.as().code());
        entry.put("decider", decision.decider());
        entry.put("reasons", decision.reasons().stream().map(Reason::code).toList());
        entry.put("contests", decision.contests().stream().sorted().toList());
        entry.put("assessment", decision.assessment());
        entry.put("style_cast", decision.ballot().styleCast());
        entry.put("style_right", desk.hidden(key, decision.ballot().styleRight()));
        entry.put("held_apart", decision.ballot().heldApart());
        boolean court = decision.decider().equals("court");
        entry.put(
                court ? "order_reference" : "reference",
                court ? desk.hidden(key, decision.legalReference()) : decision.legalReference());
        put(entry, "session", decision.sessionNo());
        put(entry, "motion", decision.motionNo());
        if (decision.departsBecause() != null) {
            entry.put("departs_because", desk.hidden(key, decision.departsBecause()));
        }
        return entry;
    }

    private static void put(Map<String, Object> entry, String name, @Nullable Integer number) {
        if (number != null) {
            entry.put(name, number);
        }
    }
}
