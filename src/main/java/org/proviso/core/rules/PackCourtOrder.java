package org.proviso.core.rules;

import java.time.LocalDate;
import java.util.Optional;
import org.proviso.core.CourtOrder;

/**
 * A court's order that changed a rule for the elections it names: an act of its own, dated, beside the law it changed.
 * An order in force or final gives the rule its value; one still disputed leaves nobody knowing; one set aside is kept
 * to be read and changes nothing.
 */
public record PackCourtOrder(
        String court, LocalDate on, LocalDate to, CourtOrder.Status standing, Rule rule, DatedValue value) {

    /** Whether it speaks of elections on that date. */
    public boolean covers(LocalDate electionDate) {
        return !value.from().isAfter(electionDate) && !to.isBefore(electionDate);
    }

    /** What the rule is for an election on that date by this order; empty where the order changes nothing there. */
    Optional<ResolvedRule> given(LocalDate electionDate) {
        if (!covers(electionDate) || standing == CourtOrder.Status.SET_ASIDE) {
            return Optional.empty();
        }
        Reference reference = new Reference(
                "Order of " + court + " of " + on + ", " + value.reference().title(),
                value.reference().section(),
                value.reference().year());
        return Optional.of(
                standing == CourtOrder.Status.PENDING
                        ? new ResolvedRule(rule, new RuleValue.Unknown(), reference, Basis.UNKNOWN, null)
                        : new ResolvedRule(rule, value.value(), reference, value.basis(), null));
    }
}
