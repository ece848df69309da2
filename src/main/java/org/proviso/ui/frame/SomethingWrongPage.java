package org.proviso.ui.frame;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A page that could not be made, for a reason that no other page of errors knows. The log has the reason. */
@PageTitle("Something went wrong · Proviso")
@AnonymousAllowed
@ParentLayout(OfficeFrame.class)
class SomethingWrongPage extends Composite<ErrorPage> implements HasErrorParameter<Exception> {

    private static final long serialVersionUID = 1L;
    private static final Logger LOG = LoggerFactory.getLogger(SomethingWrongPage.class);

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<Exception> parameter) {
        LOG.error("The page {} could not be made.", event.getLocation().getPath(), parameter.getException());
        getContent()
                .say(
                        "Something went wrong",
                        "This page could not be shown. Nothing was changed. Go back and try again. If it happens again,"
                                + " tell your administrator.");
        return HttpServletResponse.SC_INTERNAL_SERVER_ERROR;
    }
}
