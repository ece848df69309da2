package org.proviso.access.ui;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import org.proviso.access.ClientAddress;
import org.proviso.access.Throttle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;

/**
 * Slows down guessing: five tries for one user name, twenty from one address within fifteen minutes. A try is counted
 * before the password is looked at, so that guesses at the same moment gain nothing; one that was right is taken back.
 * What somebody typed as a user name is never logged: it may be their password.
 */
@Component
class SignInGuard {

    static final int TRIES_FOR_A_NAME = 5;
    static final int TRIES_FROM_AN_ADDRESS = 20;
    static final Duration SPAN = Duration.ofMinutes(15);

    private static final Logger LOG = LoggerFactory.getLogger(SignInGuard.class);

    private final Throttle names;
    private final Throttle addresses;

    SignInGuard(Clock clock) {
        names = new Throttle(clock, TRIES_FOR_A_NAME, SPAN);
        addresses = new Throttle(clock, TRIES_FROM_AN_ADDRESS, SPAN);
    }

    void filter(ServletRequest request, ServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        if (request instanceof HttpServletRequest asked && isTry(asked) && refuses(asked)) {
            LOG.warn("A sign-in from {} was refused: too many wrong ones.", asked.getRemoteAddr());
            ((HttpServletResponse) response).sendRedirect(asked.getContextPath() + "/sign-in?wait");
        } else {
            chain.doFilter(request, response);
        }
    }

    void wrong(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        LOG.warn("A sign-in from {} was wrong.", request.getRemoteAddr());
        response.sendRedirect(request.getContextPath() + "/sign-in?wrong");
    }

    void right(HttpServletRequest request) {
        names.forget(name(request));
        addresses.takeBack(ClientAddress.of(request));
    }

    private boolean refuses(HttpServletRequest request) {
        return addresses.refuses(ClientAddress.of(request)).isPresent()
                || names.refuses(name(request)).isPresent();
    }

    private static boolean isTry(HttpServletRequest request) {
        return request.getMethod().equals("POST") && request.getServletPath().equals(SignInController.SIGN_IN);
    }

    private static String name(HttpServletRequest request) {
        String typed = request.getParameter("user");
        return typed == null ? "" : typed.strip().toLowerCase(Locale.ROOT);
    }
}
