package org.proviso.ui.field;

import com.vaadin.flow.component.AbstractSinglePropertyField;
import com.vaadin.flow.component.HasStyle;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** The browser's own select list: a few words, each with its code. */
@Tag("select")
public final class Choice extends AbstractSinglePropertyField<Choice, String> implements HasStyle {

    private static final String SELECTED = "selected";

    private final Map<String, Element> options = new LinkedHashMap<>();

    public Choice(Map<String, String> choices) {
        super("value", choices.keySet().iterator().next(), false);
        setSynchronizedEvent("change");
        choices.forEach((code, words) -> {
            Element option = new Element("option").setText(words).setAttribute("value", code);
            options.put(code, option);
            getElement().appendChild(option);
        });
    }

    /** A code that is not among the choices is added as is, so that nothing keyed is lost. */
    @Override
    public void setValue(String code) {
        if (!options.containsKey(code)) {
            Element option =
                    new Element("option").setText(code.replace('_', ' ')).setAttribute("value", code);
            options.put(code, option);
            getElement().appendChild(option);
        }
        options.values().forEach(option -> option.removeAttribute(SELECTED));
        options.get(code).setAttribute(SELECTED, "");
        super.setValue(code);
    }

    /** The words of the code that is chosen. */
    public String chosenWords() {
        Element option = options.get(getValue());
        return option == null ? "" : option.getText();
    }

    /** Called when the person at the page chooses. */
    public void onChosen(Consumer<String> act) {
        addValueChangeListener(event -> {
            if (event.isFromClient()) {
                act.accept(event.getValue());
            }
        });
    }
}
