package org.proviso.access.ui;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.List;
import org.proviso.access.AccessService;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** A person who signed in with a one-time password sees nothing else until it is changed. */
@Component
class OneTimePasswordFilter extends OncePerRequestFilter {

    private static final String MARK = OneTimePasswordFilter.class.getName();
    private static final List<String> OPEN =
            List.of(PasswordController.PASSWORD, SignInController.SIGN_IN, SignInController.SIGN_OUT, "/themes/");

    private final AccessService access;

    OneTimePasswordFilter(AccessService access) {
        this.access = access;
    }

    static void mark(HttpServletRequest request) {
        request.getSession().setAttribute(MARK, true);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        if (session != null && session.getAttribute(MARK) != null && !isOpen(request) && isStillOneTime(session)) {
            response.sendRedirect(request.getContextPath() + PasswordController.PASSWORD);
        } else {
            chain.doFilter(request, response);
        }
    }

    private boolean isStillOneTime(HttpSession session) {
        boolean still = access.signedIn().passwordIsOneTime();
        if (!still) {
            session.removeAttribute(MARK);
        }
        return still;
    }

    private static boolean isOpen(HttpServletRequest request) {
        return OPEN.stream().anyMatch(request.getServletPath()::startsWith);
    }
}
