package org.proviso.ui.frame;

import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.spring.security.AuthenticationContext;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.FindField;
import org.proviso.ui.help.HelpPanel;
import org.proviso.ui.help.HelpPanels;

/** The frame around every page: main menu, finder, election, who is signed in, last message. */
@PermitAll
public final class OfficeFrame extends Div implements RouterLayout, AfterNavigationObserver {

    private final Main main = new Main();
    private final MessageLine said = new MessageLine();
    private final Span opened = new Span();
    private final RoomLinks rooms;
    private final HelpPanel help;
    private boolean first = true;

    OfficeFrame(
            AccessService access,
            WorkingElection workplace,
            AuthenticationContext signedIn,
            List<WorkUnderWay> works,
            HelpPanels helps) {
        addClassName("office");
        help = helps.panel();
        rooms = new RoomLinks(access);
        main.setId("main");
        main.getElement().setAttribute("tabindex", "-1");
        add(skip(), top(access, signedIn));
        opened.addClassName("heard");
        opened.getElement().setAttribute("role", "status");
        add(new ElectionBar(workplace), new WorkUnderWayLine(works), opened, said, main, help);
        UI.getCurrent().getPage().addJsModule("context://keys.js");
        UI.getCurrent().getPage().addJsModule("context://pressed.js");
    }

    private static Anchor skip() {
        Anchor skip = new Anchor("#main", "Skip to main content");
        skip.addClassName("skip");
        skip.setRouterIgnore(true);
        return skip;
    }

    private Header top(AccessService access, AuthenticationContext signedIn) {
        Anchor name = Links.link("Proviso", "");
        name.addClassName("name");
        Header top = new Header(name, rooms, new FindField(), help.button(), new SignedInUser(access, signedIn));
        top.addClassName("top");
        return top;
    }

    @Override
    public void showRouterLayoutContent(@Nullable HasElement content) {
        main.removeAll();
        if (content != null) {
            main.getElement().appendChild(content.getElement());
        }
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        said.here(UI.getCurrent());
        sayOpened(event.getActiveChain().get(0));
        WorkUnderWayLine.look();
        rooms.at(event.getLocation().getPath());
        help.at(event.getLocation().getPath());
    }

    /** A browser says the title of a page it loads. Of a page that only takes the place of another, the frame says it. */
    private void sayOpened(HasElement page) {
        if (!first) {
            PageTitle title = page.getClass().getAnnotation(PageTitle.class);
            opened.setText(
                    page instanceof HasDynamicTitle own ? own.getPageTitle() : title == null ? "" : title.value());
        }
        first = false;
    }
}
