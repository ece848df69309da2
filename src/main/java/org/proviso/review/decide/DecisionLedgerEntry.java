package org.proviso.review.decide;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseActSteps;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.springframework.stereotype.Component;

/**
 * What the ledger has of a decision: all its row has, so that neither can be changed alone. Free text is hidden, and so
 * is the style the voter should have had, which says where somebody lives, and what a court's order is called.
 */
@Component
class DecisionLedgerEntry {

    private final CaseActSteps steps;
    private final DecisionStore decisions;

    DecisionLedgerEntry(CaseActSteps steps, DecisionStore decisions) {
        this.steps = steps;
        this.decisions = decisions;
    }

    /** The entries of the decisions that stand on these envelopes, by envelope number in the order given. */
    Map<EnvelopeNumber, Map<String, Object>> of(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId, envelopeNos);
        Map<EnvelopeNumber, UnaryOperator<String>> hiding = steps.hiding(electionId, envelopeNos);
        Map<EnvelopeNumber, Map<String, Object>> entries = new LinkedHashMap<>();
        envelopeNos.forEach(number -> entries.put(
                number,
                of(
                        Optional.ofNullable(standing.get(number)).orElseThrow(),
                        Objects.requireNonNull(hiding.get(number), "every envelope has a way to hide its texts"))));
        return entries;
    }

    private static Map<String, Object> of(Decision decision, UnaryOperator<String> hidden) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("as", decision.as().code());
        entry.put("decider", decision.decider());
        entry.put("reasons", decision.reasons().stream().map(Reason::code).toList());
        entry.put("contests", decision.contests().stream().sorted().toList());
        entry.put("assessment", decision.assessment());
        entry.put("style_cast", decision.ballot().styleCast());
        entry.put("style_right", hidden.apply(decision.ballot().styleRight()));
        entry.put("held_apart", decision.ballot().heldApart());
        boolean court = decision.decider().equals("court");
        entry.put(
                court ? "order_reference" : "reference",
                court ? hidden.apply(decision.legalReference()) : decision.legalReference());
        put(entry, "session", decision.sessionNo());
        put(entry, "motion", decision.motionNo());
        if (decision.departsBecause() != null) {
            entry.put("departs_because", hidden.apply(decision.departsBecause()));
        }
        return entry;
    }

    private static void put(Map<String, Object> entry, String name, @Nullable Integer number) {
        if (number != null) {
            entry.put(name, number);
        }
    }
}
