package org.proviso.files.packs;

import java.time.LocalDate;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleType;

/** The text of a rule pack that is laid over another one and changes one rule, for those who write no YAML. */
public final class OneRulePack {

    private OneRulePack() {}

    /**
     * The pack: over which one, which rule, its value as packs spell it, from which election on, where it is written, how it
     * is known and since when. Reading the text checks all of it.
     */
    public static String text(
            String over, Rule rule, String value, LocalDate from, Reference reference, Basis basis, LocalDate checked) {
        return """
                pack: own-%1$s
                name: %2$s
                over: %1$s
                caution: %3$s
                rules:
                  %4$s:
                    - from: %5$s
                      value: %6$s
                      reference: {title: %7$s, section: %8$s, year: %9$d}
                      basis: %10$s
                      checked: %11$s
                """.formatted(
                        over,
                        quoted("The office's own rules over " + over),
                        quoted("One rule was changed by the office. Check it with counsel."),
                        rule.key(),
                        from,
                        value(rule, value),
                        quoted(reference.title()),
                        quoted(reference.section()),
                        reference.year(),
                        basis.code(),
                        checked);
    }

    private static String value(Rule rule, String value) {
        if (rule.type() == RuleType.TEXT || rule.type() == RuleType.TIME) {
            return quoted(value);
        }
        String oneLine = value.replaceAll("[\\r\\n]+", " ");
        boolean list = rule.type() == RuleType.WORDS && !oneLine.startsWith("[");
        return list ? "[" + oneLine + "]" : oneLine;
    }

    private static String quoted(String text) {
        String safe = text.replaceAll("\\p{Cntrl}", " ");
        return "\"" + safe.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
