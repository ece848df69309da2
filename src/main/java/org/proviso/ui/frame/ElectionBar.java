package org.proviso.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.List;

/** The thin line under the menu: the current election, and in a demonstration a note that everything is invented. */
final class ElectionBar extends Div {

    ElectionBar(WorkingElection workplace) {
        addClassName("election");
        getElement().setAttribute("role", "region").setAttribute("aria-label", "Current election");
        add(election(workplace), new Span(workplace.demonstration()));
    }

    private static Component election(WorkingElection workplace) {
        List<ElectionLine> all = workplace.all();
        if (all.size() < 2) {
            return new Span(workplace.election().map(ElectionLine::words).orElse("No election loaded"));
        }
        Select<ElectionLine> choice = new Select<>();
        choice.setAriaLabel("Current election");
        choice.setItems(all);
        choice.setItemLabelGenerator(ElectionLine::words);
        workplace.election().ifPresent(choice::setValue);
        choice.addValueChangeListener(event -> {
            workplace.choose(event.getValue().id());
            UI.getCurrent().getPage().setLocation("/");
        });
        return choice;
    }
}
