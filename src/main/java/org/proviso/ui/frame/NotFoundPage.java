package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;

/** An address that matches no page. */
@PageTitle("Page not found · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NotFoundPage extends Composite<ErrorPage> implements com.vaadin.flow.router.HasErrorParameter<NotFoundException> {

    /** What is missing on a page is said so; the router's own words are for programmers. */
    private static final String OUR_WORDS = "There is";

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        String said = String.valueOf(parameter.getException().getMessage());
        String why = said.startsWith(OUR_WORDS) ? said : OUR_WORDS + " no page at this address.";
        getContent().say("Page not found", why);
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
