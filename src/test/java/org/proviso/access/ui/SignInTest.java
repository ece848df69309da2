package org.proviso.access.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.access.ui.PlainBrowser.target;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.WebStaff;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** Signing in and out through the plain form, and what comes before anything else. */
@SpringBootTest(classes = Proviso.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class SignInTest {

    @Autowired
    private ApplicationContext server;

    @LocalServerPort
    private int port;

    private PlainBrowser browser;

    @BeforeEach
    void open() {
        browser = new PlainBrowser(port);
        WebStaff.hire(server, "signs-in", Role.REVIEWER);
    }

    @Test
    void the_page_is_plain_strict_and_needs_no_session() {
        HttpResponse<String> page = browser.get("/sign-in");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("<html lang=\"en\"", "<h1>Sign in</h1>")
                .doesNotContain("<script", "style=\"");
        assertThat(page.headers().firstValue("Content-Security-Policy"))
                .contains("default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; form-action 'self';"
                        + " frame-ancestors 'none'; base-uri 'none'");
        assertThat(page.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
        assertThat(browser.hasCookie("JSESSIONID")).isFalse();
    }

    @Test
    void whoever_signs_in_gets_to_the_page_they_asked_for() {
        assertThat(target(browser.get("/password"))).isEqualTo("/sign-in");
        assertThat(target(browser.signIn("signs-in", WebStaff.PASSWORD))).startsWith("/password");
        assertThat(browser.get("/password").body()).contains("<h1>Change your password</h1>");
        assertThat(target(browser.get("/sign-in"))).isEqualTo("/");
    }

    @Test
    void a_wrong_name_and_a_wrong_password_get_the_same_answer() {
        HttpResponse<String> wrongPassword = browser.signIn("signs-in", "another password");
        HttpResponse<String> wrongName = new PlainBrowser(port).signIn("no-such-person", WebStaff.PASSWORD);
        assertThat(target(wrongPassword)).isEqualTo("/sign-in?wrong").isEqualTo(target(wrongName));
        assertThat(browser.get("/sign-in?wrong").body()).contains("The user name or password is wrong.");
    }

    @Test
    void after_five_wrong_passwords_for_a_name_the_right_one_is_refused_too() {
        WebStaff.hire(server, "guessed", Role.REVIEWER);
        for (int i = 0; i < SignInGuard.TRIES_FOR_A_NAME; i++) {
            assertThat(target(browser.signIn("guessed", "guess " + i))).isEqualTo("/sign-in?wrong");
        }
        assertThat(target(browser.signIn(" GUESSED ", WebStaff.PASSWORD))).isEqualTo("/sign-in?wait");
        assertThat(target(browser.signIn("guessed", WebStaff.PASSWORD))).isEqualTo("/sign-in?wait");
        assertThat(browser.get("/sign-in?wait").body()).contains("Wait 15 minutes");
        assertThat(target(browser.signIn("signs-in", WebStaff.PASSWORD))).startsWith("/");
    }

    @Test
    void a_sign_in_and_a_sign_out_without_the_forms_token_are_refused() {
        browser.post("/sign-in", Map.of("user", "signs-in", "password", WebStaff.PASSWORD));
        assertThat(target(browser.get("/password"))).isEqualTo("/sign-in");
        browser.signIn("signs-in", WebStaff.PASSWORD);
        assertThat(browser.post("/sign-out", Map.of()).statusCode()).isEqualTo(403);
        assertThat(browser.get("/password").statusCode()).isEqualTo(200);
    }

    @Test
    void whoever_signs_out_is_told_so_and_is_out() {
        browser.signIn("signs-in", WebStaff.PASSWORD);
        assertThat(target(browser.fill("/sign-out", "/sign-out", Map.of()))).isEqualTo("/sign-in?out");
        assertThat(browser.get("/sign-in?out").body()).contains("You are signed out.");
        assertThat(target(browser.get("/password"))).isEqualTo("/sign-in");
    }

    @Test
    void the_holder_of_a_one_time_password_changes_it_before_anything_else() {
        WebStaff.hireWithOneTimePassword(server, "newcomer", Role.INTAKE);
        assertThat(target(browser.signIn("newcomer", WebStaff.PASSWORD))).isEqualTo("/password");
        assertThat(target(browser.get("/"))).isEqualTo("/password");
        assertThat(browser.get("/password").body()).contains("one-time password");
        HttpResponse<String> typo = change(WebStaff.PASSWORD, "quiet mill river", "quiet mill rivers");
        assertThat(typo.statusCode()).isEqualTo(422);
        assertThat(typo.body()).contains("The two new passwords do not match.");
        assertThat(change("not the old one", "quiet mill river", "quiet mill river")
                        .body())
                .contains("The old password is not right.");
        assertThat(target(change(WebStaff.PASSWORD, "quiet mill river", "quiet mill river")))
                .isEqualTo("/");
        assertThat(browser.get("/").statusCode()).isEqualTo(200);
        assertThat(target(new PlainBrowser(port).signIn("newcomer", "quiet mill river")))
                .startsWith("/")
                .doesNotContain("password");
    }

    private HttpResponse<String> change(String old, String chosen, String again) {
        return browser.fill("/password", "/password", Map.of("old", old, "chosen", chosen, "again", again));
    }

    @Test
    void outside_a_demonstration_no_account_is_named() {
        assertThat(browser.get("/sign-in").body()).doesNotContain("demonstration", "demo-only-password");
    }
}
