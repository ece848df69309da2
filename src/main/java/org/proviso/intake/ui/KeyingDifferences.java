package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.intake.keying.BoxDifference;
import org.proviso.intake.keying.KeyedText;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.Choice;
import org.proviso.ui.field.TypedDates;

/** The differences between two keyings, side by side. Each is resolved from the paper envelope. */
final class KeyingDifferences extends Div {

    private final Map<BoxDifference, Choice> choices = new LinkedHashMap<>();

    KeyingDifferences(List<BoxDifference> differences) {
        addClassName("differences");
        getElement().setAttribute("data-typing", "settle");
        add(new H2("The two keyings differ"));
        add(new Paragraph("Check the envelope again. For each field, choose what it says."));
        PlainTable table = new PlainTable(
                "Fields keyed differently", "Field", "You keyed", "First keying", "What the envelope says");
        for (BoxDifference difference : differences) {
            Choice choice = choice(difference);
            choices.put(difference, choice);
            table.row(List.of(
                    new Span(label(difference.box())),
                    said(difference, difference.keyedNow().words()),
                    said(difference, difference.keyedBefore().words()),
                    choice));
        }
        add(table);
    }

    private static Choice choice(BoxDifference difference) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", "choose");
        words.put("now", "what I keyed");
        words.put("before", "the first keying");
        Choice choice = new Choice(words);
        choice.getElement().setAttribute("aria-label", "What the envelope says: " + label(difference.box()));
        return choice;
    }

    private static Span said(BoxDifference difference, String text) {
        String words = Code.find(KeyingChoice.class, difference.box())
                .map(choice -> choice.choices().getOrDefault(text, text))
                .orElseGet(() -> TypedDates.day(text).map(UsDates::digits).orElse(text));
        Span said = new Span(text.isEmpty() ? "empty" : words);
        said.addClassName(text.isEmpty() ? "soft" : "num");
        return said;
    }

    private static String label(String box) {
        return Code.find(KeyingBox.class, box)
                .map(KeyingBox::label)
                .or(() -> Code.find(KeyingChoice.class, box).map(KeyingChoice::label))
                .orElse("Statements checked");
    }

    boolean isSettled() {
        return choices.values().stream().noneMatch(choice -> choice.getValue().isEmpty());
    }

    /** Copies what was chosen from the first keying into the fields. */
    void into(Map<String, String> boxes) {
        choices.forEach((difference, choice) -> {
            if (choice.getValue().equals("before")) {
                put(boxes, difference.box(), difference.keyedBefore());
            }
        });
    }

    static void put(Map<String, String> boxes, String box, KeyedText keyed) {
        boxes.put(box, keyed.text());
        boxes.computeIfPresent(
                box + KeyingFormReader.STATE, (name, before) -> keyed.state().code());
    }

    void focus() {
        choices.values().iterator().next().getElement().executeJs("setTimeout(() => this.focus())");
    }
}
