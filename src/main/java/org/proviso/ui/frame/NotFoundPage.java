package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.proviso.ui.NothingHereException;

/** An address that matches no page. */
@PageTitle("Page not found · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NotFoundPage extends Composite<ErrorPage> implements com.vaadin.flow.router.HasErrorParameter<NotFoundException> {

    /** What is missing on a page is said so; the router's own words are for programmers. */
    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        String why = parameter.getException() instanceof NothingHereException missing
                ? missing.words()
                : "There is no page at this address.";
        getContent().say("Page not found", why);
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
