package org.proviso.access.ui;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.stereotype.Component;

/** Sends whoever signed in to the page they asked for, or with a one-time password to change that first. */
@Component
class SignedIn implements AuthenticationSuccessHandler {

    private static final Logger LOG = LoggerFactory.getLogger(SignedIn.class);

    private final AuthenticationSuccessHandler toWhatWasAsked = new SavedRequestAwareAuthenticationSuccessHandler();
    private final AccessService access;
    private final SignInGuard guard;

    SignedIn(AccessService access, SignInGuard guard) {
        this.access = access;
        this.guard = guard;
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication who)
            throws IOException, ServletException {
        guard.right(request);
        OfficeUser user = access.whoIs(who.getName()).orElseThrow();
        LOG.info("{} signed in.", user.actor().pseudonym());
        if (user.passwordIsOneTime()) {
            OneTimePasswordFilter.mark(request);
            response.sendRedirect(request.getContextPath() + PasswordController.PASSWORD);
        } else {
            toWhatWasAsked.onAuthenticationSuccess(request, response, who);
        }
    }
}
