package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;

/** Shown for a page about an election when no election is loaded. */
@PageTitle("No election loaded · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NoElectionPage extends Composite<ErrorPage> implements HasErrorParameter<NoElectionException> {

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NoElectionException> parameter) {
        getContent()
                .say(
                        "No election loaded",
                        String.valueOf(parameter.getException().getMessage()));
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
