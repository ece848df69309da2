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

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        String why = parameter.hasCustomMessage() ? parameter.getCustomMessage() : "There is no page at this address.";
        getContent().say("Page not found", why);
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
