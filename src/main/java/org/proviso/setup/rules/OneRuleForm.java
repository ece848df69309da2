package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import org.proviso.core.Code;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.Rule;
import org.proviso.files.packs.OneRulePack;
import org.proviso.files.packs.RulePacks;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;

/** One rule changed without writing a file: the rule, its value, where it is written and how the office knows it. */
final class OneRuleForm extends Div {

    private final String over;
    private final LocalDate election;
    private final LocalDate today;
    private final BiFunction<String, String, Boolean> tried;
    private final RuleValueFields rule = new RuleValueFields("choose a rule", "choose a value");
    private final TypedField title = new TypedField("law-title", "Written in").like("Example Election Code");
    private final TypedField section = new TypedField("law-section", "Section").like("6.2");
    private final TypedField year = new TypedField("law-year", "Year").like("2026");
    private final ChoiceField basis = new ChoiceField("law-basis", "How it is known", bases());

    /** {@code tried} proves the pack whose name and text it is given, and says whether it could be read. */
    OneRuleForm(String over, LocalDate election, LocalDate today, BiFunction<String, String, Boolean> tried) {
        this.over = over;
        this.election = election;
        this.today = today;
        this.tried = tried;
        getElement().setAttribute("data-typing", "go-on");
        add(new H2("Change one rule"));
        if (!RulePacks.bundled().contains(over)) {
            add(new Paragraph("The office's own rule pack is in force. Change the rule in its file and upload it."));
            return;
        }
        ActButton prove = new ActButton("Prove changed rule").does(this::prove);
        add(
                new Paragraph(
                        "It is laid over the rule pack in force, proved and compared first. Nothing changes until you"
                                + " put it in force. For this election's value only, record a county ruling instead."),
                rule,
                title,
                section,
                year,
                basis,
                prove);
    }

    private static Map<String, String> bases() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(Basis.READ.code(), "read in this source today");
        words.put(Basis.MEMORY.code(), "from memory: no ballot is rejected on it without a county ruling");
        return words;
    }

    private void prove() {
        title.problem(title.text().isEmpty() ? "Required. Enter the title of the law or order." : "");
        boolean isYear = year.text().matches("(1[789]|20)[0-9]{2}");
        year.problem(isYear ? "" : "Required. Enter the year in four digits.");
        if (rule.key().isEmpty() || rule.value().isEmpty() || title.hasProblem() || !isYear) {
            MessageLine.refused(
                    rule.key().isEmpty() || rule.value().isEmpty()
                            ? "Choose a rule and its value."
                            : "Not proved. Check the highlighted fields.");
            return;
        }
        String text = OneRulePack.text(
                over,
                Rule.find(rule.key()).orElseThrow(),
                rule.value(),
                election,
                new Reference(title.text(), section.text(), Integer.parseInt(year.text())),
                Code.find(Basis.class, basis.code()).orElseThrow(),
                today);
        rule.problem("");
        if (tried.apply(RuleValueFields.words(rule.key()), text)) {
            MessageLine.done("Proved. The result is on the left; nothing is in force yet.");
        }
    }
}
