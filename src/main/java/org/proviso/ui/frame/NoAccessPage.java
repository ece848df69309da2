package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.proviso.access.NotPermittedException;

/** Shown when the signed-in person may not see a page, with the reason. */
@PageTitle("No access · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NoAccessPage extends Composite<ErrorPage> implements HasErrorParameter<NotPermittedException> {

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotPermittedException> parameter) {
        getContent()
                .say(
                        "You do not have access to this page",
                        String.valueOf(parameter.getException().getMessage()));
        return HttpServletResponse.SC_FORBIDDEN;
    }
}
