package org.proviso.ui.frame;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.spring.security.AuthenticationContext;
import org.proviso.access.AccessService;
import org.proviso.ui.Links;

/** The right end of the top line: who is signed in, and the sign-out button. */
final class SignedInUser extends Div {

    SignedInUser(AccessService access, AuthenticationContext signedIn) {
        addClassName("who");
        Anchor own = Links.link(access.signedIn().fullName(), "password");
        own.setRouterIgnore(true);
        own.getElement().setAttribute("title", "Change your password");
        NativeButton out = new NativeButton("Sign out", event -> signedIn.logout());
        out.addClassName("out");
        add(own, out);
    }
}
