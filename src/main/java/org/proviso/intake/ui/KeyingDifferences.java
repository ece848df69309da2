package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.proviso.core.Code;
import org.proviso.intake.keying.BoxDifference;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.Choice;
import org.proviso.ui.field.TypedDates;

/** Where two keyings differ, side by side; each is settled by choosing, with the paper in hand. */
final class KeyingDifferences extends Div {

    private static final Pattern STATED = Pattern.compile("(.*?) ?\\((left blank|illegible|refused)\\)");

    private final Map<BoxDifference, Choice> choices = new LinkedHashMap<>();

    KeyingDifferences(List<BoxDifference> differences) {
        addClassName("differences");
        getElement().setAttribute("data-typing", "settle");
        add(new H2("Two keyings differ"));
        add(new Paragraph("Look at the paper again, choose for each box what it says, and settle it."));
        PlainTable table =
                new PlainTable("Boxes keyed differently", "Box", "You keyed", "Keyed before", "What it says");
        for (BoxDifference one : differences) {
            Choice choice = choice(one);
            choices.put(one, choice);
            table.row(List.of(
                    new Span(label(one.box())), said(one, one.keyedNow()), said(one, one.keyedBefore()), choice));
        }
        add(table);
    }

    private static Choice choice(BoxDifference one) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", "choose");
        words.put("now", "as I keyed it");
        words.put("before", "as it was keyed before");
        Choice choice = new Choice(words);
        choice.getElement().setAttribute("aria-label", "What the paper says: " + label(one.box()));
        return choice;
    }

    private static Span said(BoxDifference one, String text) {
        String words = Code.find(KeyingChoice.class, one.box())
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
                .orElse("Statements ticked");
    }

    boolean isSettled() {
        return choices.values().stream().noneMatch(choice -> choice.getValue().isEmpty());
    }

    /** Puts what was chosen from the earlier keying among the boxes. */
    void into(Map<String, String> boxes) {
        choices.forEach((one, choice) -> {
            if (choice.getValue().equals("before")) {
                put(boxes, one.box(), one.keyedBefore());
            }
        });
    }

    static void put(Map<String, String> boxes, String box, String text) {
        Matcher stated = STATED.matcher(text);
        boolean isStated = stated.matches();
        boxes.put(box, isStated ? stated.group(1) : text);
        if (boxes.containsKey(box + KeyingFormReader.STATE)) {
            boxes.put(box + KeyingFormReader.STATE, isStated ? stated.group(2).replace(' ', '_') : "keyed");
        }
    }

    void focus() {
        choices.values().iterator().next().getElement().executeJs("setTimeout(() => this.focus())");
    }
}
