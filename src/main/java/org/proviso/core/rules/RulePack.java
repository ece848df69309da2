package org.proviso.core.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One jurisdiction's parameters, dated and referenced, over the federal floor. Values of a rule are in ascending
 * order of the election date they first apply to.
 */
public record RulePack(
        String id,
        String name,
        boolean illustrative,
        String caution,
        Map<Rule, List<DatedValue>> values,
        Map<Reason, ReasonText> reasons,
        List<PackCourtOrder> orders) {

    /** A pack without court orders. */
    public RulePack(
            String id,
            String name,
            boolean illustrative,
            String caution,
            Map<Rule, List<DatedValue>> values,
            Map<Reason, ReasonText> reasons) {
        this(id, name, illustrative, caution, values, reasons, List.of());
    }

    /** This pack laid over a floor: where it says nothing, or nothing yet, the floor speaks. */
    public RulePack over(RulePack floor) {
        Map<Rule, List<DatedValue>> merged = new LinkedHashMap<>(floor.values);
        values.forEach((rule, own) -> merged.merge(rule, own, RulePack::laidOver));
        Map<Reason, ReasonText> texts = new LinkedHashMap<>(floor.reasons);
        texts.putAll(reasons);
        List<PackCourtOrder> both = new ArrayList<>(floor.orders);
        both.addAll(orders);
        return new RulePack(id, name, illustrative, caution, merged, texts, List.copyOf(both));
    }

    /** The court order that gives a rule its value for an election on that date; the latest of several. */
    public Optional<PackCourtOrder> orderOn(Rule rule, LocalDate electionDate) {
        return orders.stream()
                .filter(order -> order.rule().equals(rule))
                .filter(order -> order.given(electionDate).isPresent())
                .max(Comparator.comparing(PackCourtOrder::on));
    }

    private static List<DatedValue> laidOver(List<DatedValue> floor, List<DatedValue> own) {
        List<DatedValue> both = new ArrayList<>();
        for (DatedValue value : floor) {
            if (own.isEmpty() || value.from().isBefore(own.get(0).from())) {
                both.add(value);
            }
        }
        both.addAll(own);
        return List.copyOf(both);
    }

    /** The value in force for an election on that date, or empty where the pack has none yet. */
    public Optional<DatedValue> inForce(Rule rule, LocalDate electionDate) {
        @Nullable DatedValue found = null;
        for (DatedValue value : values.getOrDefault(rule, List.of())) {
            if (value.appliesTo(electionDate)) {
                found = value;
            }
        }
        return Optional.ofNullable(found);
    }
}
