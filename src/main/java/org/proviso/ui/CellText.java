package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.Set;
import org.proviso.ui.field.Choice;

/** What a cell says: its words, without buttons, boxes, and what is only drawn or only heard. */
final class CellText {

    private static final Set<String> PRESSED = Set.of("button", "vaadin-button", "input", "select", "textarea");

    private CellText() {}

    static String of(Component cell) {
        StringBuilder words = new StringBuilder();
        add(cell.getElement(), words);
        return words.toString().strip();
    }

    private static void add(Element element, StringBuilder words) {
        if (element.isTextNode()) {
            apart(words, element.getText());
            return;
        }
        Optional<Component> component = element.getComponent();
        if (component.isPresent() && component.get() instanceof Choice choice) {
            apart(words, choice.chosenWords());
            return;
        }
        if (!isSilent(element, component)) {
            element.getChildren().forEach(child -> add(child, words));
        }
    }

    private static boolean isSilent(Element element, Optional<Component> component) {
        return PRESSED.contains(element.getTag())
                || "true".equals(element.getAttribute("aria-hidden"))
                || element.getClassList().contains("heard")
                || !element.isVisible()
                || component.filter(HasValue.class::isInstance).isPresent();
    }

    /** Two pieces that would run together are words of their own. */
    private static void apart(StringBuilder words, String piece) {
        if (piece.isEmpty()) {
            return;
        }
        int length = words.length();
        if (length > 0 && !Character.isWhitespace(words.charAt(length - 1)) && begins(piece.charAt(0))) {
            words.append(' ');
        }
        words.append(piece);
    }

    private static boolean begins(char first) {
        return Character.isLetterOrDigit(first) || first == '(';
    }
}
