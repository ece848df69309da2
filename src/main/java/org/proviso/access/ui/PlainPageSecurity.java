package org.proviso.access.ui;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.proviso.access.PlainPages;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * The lock on the plain pages. They run no script at all, so their content policy allows none. Those for everyone know
 * no session; the others are open to whoever signed in, and their services ask for the role.
 */
@Configuration
class PlainPageSecurity {

    static final String CONTENT_POLICY = String.join(
            "; ",
            "default-src 'none'",
            "style-src 'self'",
            "font-src 'self'",
            "img-src 'self'",
            "form-action 'self'",
            "frame-ancestors 'none'",
            "base-uri 'none'");

    private final List<PlainPages> pages;

    PlainPageSecurity(List<PlainPages> pages) {
        this.pages = pages;
    }

    /** A page that changes nothing and knows nobody needs no token against forged requests. */
    @Bean
    @Order(1)
    SecurityFilterChain pagesForEveryone(HttpSecurity http) throws Exception {
        http.securityMatcher(any(PlainPages::forEveryone));
        http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS));
        http.csrf(AbstractHttpConfigurer::disable);
        http.requestCache(AbstractHttpConfigurer::disable);
        http.logout(AbstractHttpConfigurer::disable);
        http.authorizeHttpRequests(requests -> requests.anyRequest().permitAll());
        return withHeaders(http).build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pagesForSignedIn(HttpSecurity http, SignInGuard guard, SignInRedirect signedIn)
            throws Exception {
        http.securityMatcher(any(PlainPages::forSignedIn));
        http.csrf(csrf -> csrf.csrfTokenRepository(tokens()));
        http.formLogin(form -> form.loginPage(SignInController.SIGN_IN)
                .usernameParameter("user")
                .passwordParameter("password")
                .successHandler(signedIn)
                .failureHandler(guard::wrong));
        http.addFilterBefore(guard::filter, UsernamePasswordAuthenticationFilter.class);
        http.logout(logout -> logout.logoutRequestMatcher(
                        PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.POST, SignInController.SIGN_OUT))
                .logoutSuccessUrl("/sign-in?out"));
        http.authorizeHttpRequests(requests -> requests.requestMatchers(
                        PathPatternRequestMatcher.withDefaults().matcher(SignInController.SIGN_IN))
                .permitAll()
                .anyRequest()
                .authenticated());
        return withHeaders(http).build();
    }

    /** The token stands in a cookie and in the form, so that the sign-in page needs no session. */
    private static CookieCsrfTokenRepository tokens() {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Strict").path("/"));
        return tokens;
    }

    private RequestMatcher any(Function<PlainPages, Collection<String>> kind) {
        List<RequestMatcher> patterns = pages.stream()
                .map(kind)
                .flatMap(Collection::stream)
                .<RequestMatcher>map(PathPatternRequestMatcher.withDefaults()::matcher)
                .toList();
        return request -> patterns.stream().anyMatch(pattern -> pattern.matches(request));
    }

    private static HttpSecurity withHeaders(HttpSecurity http) throws Exception {
        return http.headers(headers -> headers.frameOptions(frame -> frame.deny())
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(policy -> policy.policy("camera=(), microphone=(), geolocation=()"))
                .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY)));
    }
}
