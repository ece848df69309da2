package org.proviso.ui.field;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.router.QueryParameters;

/** The field that finds an envelope or voter from any page. A slash focuses it; Enter searches. */
public final class FindField extends Div {

    private final Input field = new Input();

    public FindField() {
        addClassName("finder");
        field.setPlaceholder("Find an envelope or voter");
        field.getElement().setAttribute("aria-label", "Find an envelope or voter");
        field.getElement().setAttribute("data-key", "/");
        field.getElement().setAttribute("autocomplete", "off");
        field.getElement()
                .addEventListener("keydown", event -> find(event.getEventData().getString("element.value")))
                .setFilter("event.key === 'Enter'")
                .addEventData("element.value");
        add(field, new KeyCap("/"));
    }

    private static void find(String typed) {
        String sought = typed.strip();
        if (!sought.isEmpty()) {
            UI.getCurrent().navigate("find", QueryParameters.of("for", sought));
        }
    }
}
