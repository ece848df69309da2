package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.help.HelpTexts;

/** The guides by who reads them, and the words of the office. */
@Route(value = HelpView.ROUTE, layout = OfficeFrame.class)
@PageTitle("Help · Proviso")
@PermitAll
public final class HelpView extends Composite<Div> {

    static final String ROUTE = "help/words";

    HelpView(HelpTexts texts) {
        UnorderedList guides = new UnorderedList();
        texts.guides()
                .forEach(name -> guides.add(new ListItem(Links.link(texts.title(name), GuideView.address(name)))));
        getContent().addClassNames("sheet", "help-text");
        getContent()
                .add(
                        new PageHead("Guides and words", "Help (H) on every page says what it is for."),
                        guides,
                        new Html("<div>" + texts.words() + "</div>"));
    }
}
