package org.proviso.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.proviso.access.NotPermittedException;

/** A page that is not for whoever is signed in, with the reason. */
@PageTitle("Not yours · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NotYours extends Composite<ErrorPage> implements HasErrorParameter<NotPermittedException> {

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotPermittedException> parameter) {
        getContent()
                .say(
                        "Not yours to open",
                        String.valueOf(parameter.getException().getMessage()));
        return HttpServletResponse.SC_FORBIDDEN;
    }
}
