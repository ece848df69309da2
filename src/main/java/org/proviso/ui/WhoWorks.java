package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.spring.security.AuthenticationContext;
import java.util.List;
import org.proviso.access.AccessService;

/** The right end of the top line: the election worked on, who is signed in, and the way out. */
final class WhoWorks extends Div {

    WhoWorks(AccessService access, Workplace workplace, AuthenticationContext signedIn) {
        addClassName("who");
        add(election(workplace));
        Anchor own = Links.link(access.signedIn().fullName(), "password");
        own.setRouterIgnore(true);
        own.getElement().setAttribute("title", "Change your password");
        NativeButton out = new NativeButton("Sign out", event -> signedIn.logout());
        out.addClassName("out");
        add(own, out);
    }

    private static Component election(Workplace workplace) {
        List<ElectionLine> all = workplace.all();
        if (all.size() < 2) {
            return new Span(workplace.election().map(ElectionLine::words).orElse("no election yet"));
        }
        Select<ElectionLine> choice = new Select<>();
        choice.setAriaLabel("The election worked on");
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
