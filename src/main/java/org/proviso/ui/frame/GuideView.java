package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.ui.Links;
import org.proviso.ui.NothingHereException;
import org.proviso.ui.help.HelpTexts;

/** A guide to the work of one role. */
@Route(value = GuideView.ROUTE, layout = OfficeFrame.class)
@PermitAll
public final class GuideView extends Composite<Div> implements HasUrlParameter<String>, HasDynamicTitle {

    static final String ROUTE = "help/guide";

    private final HelpTexts texts;
    private String title = "";

    GuideView(HelpTexts texts) {
        this.texts = texts;
        getContent().addClassNames("sheet", "help-text");
    }

    static String address(String name) {
        return ROUTE + "/" + name;
    }

    @Override
    public String getPageTitle() {
        return "Guide: " + title + " · Proviso";
    }

    @Override
    public void setParameter(BeforeEvent event, String name) {
        title = name;
        String guide = texts.guide(name).orElseThrow(() -> new NothingHereException("There is no guide of this name."));
        getContent().removeAll();
        getContent()
                .add(
                        new Html("<div>" + guide + "</div>"),
                        new Paragraph(Links.link("Guides and words", HelpView.ROUTE)));
    }
}
