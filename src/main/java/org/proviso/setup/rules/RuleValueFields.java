package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleType;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;

/**
 * A rule, chosen by what it means, and its value: chosen from a list where the rule takes words or yes and no, typed as a
 * rule pack spells it where it takes anything else.
 */
final class RuleValueFields extends Div {

    private static final Map<RuleType, String> EXAMPLES = Map.of(
            RuleType.WORDS, "in_person, mail",
            RuleType.TEXT, "Affidavit ballot",
            RuleType.NUMBER, "30",
            RuleType.TIME, "17:00",
            RuleType.DEADLINE, "{days: 7, after: election_day, time: \"17:00\", if_closed: next_open_day}",
            RuleType.CONSEQUENCE, "{does: reject, cure: identification}");

    private final String noValue;
    private final ChoiceField rule;
    private final Div place = new Div();
    private final List<Consumer<String>> heard = new ArrayList<>();
    private final Span wrong = new Span();
    private ChoiceField chosen;
    private TypedField typed = new TypedField("value", "Value");
    private boolean isChosen;

    /** What the first choice of the rule is called, which chooses none, and what no value means. */
    RuleValueFields(String noRule, String noValue) {
        this.noValue = noValue;
        rule = new ChoiceField("rule", "Rule", rules(noRule));
        chosen = new ChoiceField("value", "Value", Map.of("", noValue));
        rule.onChosen(key -> {
            ask(key);
            heard.forEach(each -> each.accept(key));
        });
        wrong.setId("value-problem");
        wrong.addClassName("wrong");
        add(rule, place);
        ask("");
    }

    private static Map<String, String> rules(String noRule) {
        Map<String, String> rules = new LinkedHashMap<>();
        rules.put("", noRule);
        Rule.all().forEach(one -> rules.put(one.key(), words(one)));
        return rules;
    }

    /** A rule as lists name it: its meaning, with the key that packs use. */
    static String words(Rule rule) {
        String meaning = rule.meaning();
        return Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1) + " (" + rule.key() + ")";
    }

    /** The same of a key; one that the vocabulary does not have is shown as it is. */
    static String words(String key) {
        return Rule.find(key).map(RuleValueFields::words).orElse(key);
    }

    void onChosen(Consumer<String> act) {
        heard.add(act);
    }

    private void ask(String key) {
        place.removeAll();
        Rule wanted = Rule.find(key).orElse(null);
        Map<String, String> values = wanted == null ? Map.of() : values(wanted);
        isChosen = !values.isEmpty();
        if (isChosen) {
            Map<String, String> all = new LinkedHashMap<>();
            all.put("", noValue);
            all.putAll(values);
            chosen = new ChoiceField("value", "Value", all);
            wrong.setText("");
            chosen.add(wrong);
            place.add(chosen);
        } else {
            typed = new TypedField("value", "Value");
            typed.like(wanted == null ? "" : EXAMPLES.getOrDefault(wanted.type(), ""));
            place.add(typed);
        }
    }

    private static Map<String, String> values(Rule rule) {
        Map<String, String> values = new LinkedHashMap<>();
        if (rule.type() == RuleType.FLAG) {
            values.put("yes", "yes");
            values.put("no", "no");
        } else if (rule.type() == RuleType.WORD) {
            rule.words().forEach(word -> values.put(word, word.replace('_', ' ')));
        }
        return values;
    }

    /** The key of the chosen rule, or empty. */
    String key() {
        return rule.code();
    }

    /** The value as a rule pack spells it, or empty. */
    String value() {
        return isChosen ? chosen.code() : typed.text();
    }

    void choose(String key) {
        rule.code(key);
        ask(key);
    }

    void clear() {
        choose("");
    }

    /** Says what is wrong with the rule or its value; empty clears it. */
    void problem(String words) {
        if (isChosen) {
            wrong.setText(words);
        } else {
            typed.problem(words);
        }
    }
}
