package org.proviso.core.rules;

import org.jspecify.annotations.Nullable;

/**
 * What the resolved pack gives for one rule: the value, where it is written and how it is known. {@code signedBy}
 * names who signed the county ruling where one confirmed or gave the value.
 */
public record ResolvedRule(
        Rule rule,
        RuleValue value,
        Reference reference,
        Basis basis,
        @Nullable String signedBy) {

    private static final Reference NOWHERE = new Reference("not in the rule pack", "", 0);

    /** The rule pack does not mention the rule. */
    static ResolvedRule nothing(Rule rule) {
        return new ResolvedRule(rule, new RuleValue.Unknown(), NOWHERE, Basis.UNKNOWN, null);
    }

    /** No rule pack mentions the rule, not even as unknown. */
    public boolean isAbsent() {
        return !isKnown() && reference.equals(NOWHERE);
    }

    public boolean isKnown() {
        return !(value instanceof RuleValue.Unknown);
    }

    /** Known, and firm enough to cost a voter something. */
    public boolean isFirm() {
        return isKnown() && basis.isFirm();
    }

    /** The word, or the empty string where the value is unknown. */
    public String word() {
        return value instanceof RuleValue.Word word ? word.word() : "";
    }

    public boolean isYes() {
        return value instanceof RuleValue.Flag flag && flag.yes();
    }

    /** As it goes into the hash of the resolved pack. */
    String line() {
        return rule.key() + " = " + value.spelled() + " | " + reference.words() + " | " + basis.code();
    }
}
