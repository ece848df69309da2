package org.proviso.status.ui;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.LocaleResolver;

/** English, unless the address or the form says {@code lang=es}; never from a cookie. */
final class PageLanguage implements LocaleResolver {

    static final Locale SPANISH = new Locale("es", "US");

    @Override
    public Locale resolveLocale(HttpServletRequest request) {
        return "es".equals(request.getParameter("lang")) ? SPANISH : Locale.US;
    }

    @Override
    public void setLocale(HttpServletRequest request, @Nullable HttpServletResponse response, @Nullable Locale locale) {
        throw new UnsupportedOperationException("the page's language stands in its address");
    }
}
