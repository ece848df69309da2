package org.proviso.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;

/** A page about an election in an office that holds none. */
@PageTitle("No election yet · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class NoElectionYet extends Composite<ErrorPage> implements HasErrorParameter<NoElectionException> {

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NoElectionException> parameter) {
        getContent()
                .say("No election yet", String.valueOf(parameter.getException().getMessage()));
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
