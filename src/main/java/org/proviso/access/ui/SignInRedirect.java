package org.proviso.access.ui;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.FirstPage;
import org.proviso.access.OfficeUser;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SimpleUrlAuthenticationSuccessHandler;
import org.springframework.stereotype.Component;

/** Sends whoever signed in to the page they asked for, or to the one made for their only role, or with a one-time password to change that first. */
@Component
class SignInRedirect implements AuthenticationSuccessHandler {

    private static final Logger LOG = LoggerFactory.getLogger(SignInRedirect.class);

    private final AuthenticationSuccessHandler toWhatWasAsked = new SavedRequestAwareAuthenticationSuccessHandler();
    private final AccessService access;
    private final SignInGuard guard;
    private final List<FirstPage> firstPages;

    SignInRedirect(AccessService access, SignInGuard guard, List<FirstPage> firstPages) {
        this.access = access;
        this.guard = guard;
        this.firstPages = firstPages;
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication who)
            throws IOException, ServletException {
        guard.right(request);
        OfficeUser user = access.signedIn();
        LOG.info("{} signed in.", user.actor().pseudonym());
        if (user.passwordIsOneTime()) {
            OneTimePasswordFilter.mark(request);
            response.sendRedirect(request.getContextPath() + PasswordController.PASSWORD);
        } else {
            afterwards(user).onAuthenticationSuccess(request, response, who);
        }
    }

    /** A person whose only role has its own page goes to no other. */
    private AuthenticationSuccessHandler afterwards(OfficeUser user) {
        return firstPages.stream()
                .filter(page -> page.isFor(user))
                .findFirst()
                .<AuthenticationSuccessHandler>map(page -> new SimpleUrlAuthenticationSuccessHandler(page.address()))
                .orElse(toWhatWasAsked);
    }
}
