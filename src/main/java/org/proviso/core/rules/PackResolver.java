package org.proviso.core.rules;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CountyRuling;

/** Fixes a pack for one election: the values in force on its date, with the county's rulings applied to them. */
public final class PackResolver {

    private PackResolver() {}

    /** The pack for an election on that date; a ruling on an unknown rule is refused when it is read, not here. */
    public static ResolvedPack resolve(RulePack pack, LocalDate electionDate, List<ParsedRuling> rulings) {
        Map<Rule, ResolvedRule> given = new LinkedHashMap<>();
        for (Rule rule : Rule.all()) {
            given.put(rule, given(pack, rule, electionDate));
        }
        for (ParsedRuling ruled : rulings) {
            ResolvedRule before =
                    Objects.requireNonNull(given.get(ruled.rule()), "every rule is given before it is ruled on");
            given.put(ruled.rule(), apply(before, ruled));
        }
        return new ResolvedPack(pack, electionDate, given);
    }

    /** What a court ordered for this election goes before what the law says. */
    private static ResolvedRule given(RulePack pack, Rule rule, LocalDate electionDate) {
        return pack.orderOn(rule, electionDate)
                .flatMap(order -> order.given(electionDate))
                .or(() -> pack.inForce(rule, electionDate)
                        .map(value -> new ResolvedRule(rule, value.value(), value.reference(), value.basis(), null)))
                .orElse(ResolvedRule.nothing(rule));
    }

    /** A pack resolved before, from what it gave; a rule that is not among it is unknown. */
    public static ResolvedPack asGiven(RulePack pack, LocalDate electionDate, List<ResolvedRule> given) {
        Map<Rule, ResolvedRule> byRule = new LinkedHashMap<>();
        given.forEach(resolvedRule -> byRule.put(resolvedRule.rule(), resolvedRule));
        return new ResolvedPack(pack, electionDate, byRule);
    }

    /** A county ruling with its rule and value read; the value is null where it confirms the pack's own. */
    public record ParsedRuling(Rule rule, @Nullable RuleValue value, CountyRuling ruling) {}

    private static ResolvedRule apply(ResolvedRule before, ParsedRuling ruled) {
        RuleValue value = ruled.value() == null ? before.value() : ruled.value();
        CountyRuling ruling = ruled.ruling();
        Reference reference = new Reference(
                "County ruling of " + ruling.on() + " signed by " + ruling.signedBy(),
                before.isKnown() ? "on " + before.reference().words() : "",
                ruling.on().getYear());
        return new ResolvedRule(ruled.rule(), value, reference, Basis.RULED, ruling.signedBy());
    }
}
