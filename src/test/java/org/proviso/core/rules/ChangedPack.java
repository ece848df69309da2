package org.proviso.core.rules;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.CountyRuling;
import org.proviso.files.packs.RulePacks;

/** A bundled pack, read by the real loader, with a few of its values changed for a test. */
public final class ChangedPack {

    public static final LocalDate ELECTION_DAY = LocalDate.of(2026, 11, 3);

    private static final LocalDate ALWAYS = LocalDate.of(2000, 1, 1);
    private static final Reference MADE_UP = new Reference("Made for a test", "", 2026);

    private final RulePack base;
    private final Map<Rule, List<DatedValue>> values;
    private final Map<Reason, ReasonText> texts;

    private ChangedPack(RulePack base) {
        this.base = base;
        this.values = new LinkedHashMap<>(base.values());
        this.texts = new LinkedHashMap<>(base.reasons());
    }

    public static ChangedPack of(String bundled) {
        return new ChangedPack(RulePacks.load(bundled));
    }

    public ChangedPack with(Rule rule, RuleValue value) {
        return with(rule, value, Basis.READ);
    }

    public ChangedPack with(Rule rule, RuleValue value, Basis basis) {
        values.put(rule, List.of(new DatedValue(ALWAYS, value, MADE_UP, basis, ALWAYS)));
        return this;
    }

    public ChangedPack word(Rule rule, String word) {
        return with(rule, new RuleValue.Word(word));
    }

    public ChangedPack flag(Rule rule, boolean yes) {
        return with(rule, new RuleValue.Flag(yes));
    }

    public ChangedPack follows(Reason reason, Consequence consequence) {
        return with(Rule.consequence(reason), new RuleValue.Follows(consequence));
    }

    /** The same value, but only remembered. */
    public ChangedPack fromMemory(Rule rule) {
        DatedValue was = values.get(rule).get(0);
        values.put(
                rule, List.of(new DatedValue(was.from(), was.value(), was.reference(), Basis.MEMORY, was.checked())));
        return this;
    }

    public ChangedPack without(Rule... rules) {
        Arrays.asList(rules).forEach(values::remove);
        return this;
    }

    public ChangedPack withoutText(Reason reason) {
        texts.remove(reason);
        return this;
    }

    public RulePack pack() {
        return new RulePack(base.id(), base.name(), base.illustrative(), base.caution(), values, texts);
    }

    /** Resolved for 3 November 2026, with the county's rulings. */
    public ResolvedPack resolved(CountyRuling... rulings) {
        return PackResolver.resolve(pack(), ELECTION_DAY, RulePacks.rulings(List.of(rulings)));
    }

    public DeadlineBook book() {
        return DeadlineBook.of(resolved(), Set.of());
    }
}
