package org.proviso.access.ui;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Files come from whoever signed in, and from nobody else: a roll may have gigabytes, and a stranger's would fill the
 * disk before anything asked who sent it. First of all filters, because reading a parameter reads the files.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class UploadGuard extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String type = String.valueOf(request.getContentType()).toLowerCase(Locale.ROOT);
        if (type.startsWith("multipart/") && !isSignedIn(request.getSession(false))) {
            response.setStatus(HttpServletResponse.SC_FORBIDDEN);
        } else {
            chain.doFilter(request, response);
        }
    }

    private static boolean isSignedIn(@Nullable HttpSession session) {
        return session != null
                && session.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY) != null;
    }
}
