package org.proviso.core.rules;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;

/**
 * A court's order that changed rules for certain elections only. It is an act of its own and no part of the law: the
 * elections it does not name are not touched by it.
 */
public record PackOrder(
        String court,
        LocalDate on,
        Set<LocalDate> elections,
        Map<Rule, RuleValue> values,
        Reference reference,
        Basis basis,
        LocalDate checked) {

    /** What it gives for a rule in the elections it names. */
    Given given(Rule rule) {
        Reference order = new Reference(
                "Order of " + court + " of " + on + ", " + reference.title(), reference.section(), reference.year());
        return new Given(rule, values.get(rule), order, basis, null);
    }
}
