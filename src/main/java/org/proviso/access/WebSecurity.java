package org.proviso.access;

import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * The lock on every address: a view without an access annotation is closed, and whatever is not a view needs a
 * sign-in. The plain pages have a lock of their own, {@code access.ui.PlainPageSecurity}, which is asked first.
 */
@Configuration
class WebSecurity {

    /** Scripts and styles as the vendor's pages need them; nothing from elsewhere, no frame around a page. */
    private static final String CONTENT_POLICY = String.join(
            "; ",
            "default-src 'self'",
            "script-src 'self' 'unsafe-inline' 'unsafe-eval'",
            "style-src 'self' 'unsafe-inline'",
            "img-src 'self' data:",
            "font-src 'self' data:",
            "connect-src 'self'",
            "object-src 'none'",
            "base-uri 'self'",
            "form-action 'self'",
            "frame-ancestors 'none'");

    @Bean
    SecurityFilterChain pages(HttpSecurity http) throws Exception {
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView("/sign-in", "/sign-in?out"));
        http.headers(headers -> headers.frameOptions(frame -> frame.deny())
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(policy -> policy.policy("camera=(), microphone=(), geolocation=()"))
                .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY)));
        return http.build();
    }
}
