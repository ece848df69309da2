package org.proviso.notices.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.access.ui.PlainBrowser.target;

import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.WebStaff;
import org.proviso.access.ui.PlainBrowser;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** Who may fetch a letter. */
@SpringBootTest(classes = Proviso.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class LetterPdfPageTest {

    private static final String LETTER = "/notices/letter.pdf?election=tamarack-primary&envelope=P-1001&notice=99";

    @Autowired
    private ApplicationContext server;

    @LocalServerPort
    private int port;

    private PlainBrowser as(String name, Role role) {
        WebStaff.hire(server, name, role);
        PlainBrowser browser = new PlainBrowser(port);
        browser.signIn(name, WebStaff.PASSWORD);
        return browser;
    }

    @Test
    void a_visitor_has_to_sign_in_and_an_observer_may_not() {
        assertThat(target(new PlainBrowser(port).get(LETTER))).isEqualTo("/sign-in");
        assertThat(as("watches", Role.OBSERVER).get(LETTER).statusCode()).isEqualTo(403);
    }

    @Test
    void a_letter_that_is_not_there_is_not_found() {
        assertThat(as("prints", Role.SUPERVISOR).get(LETTER).statusCode()).isEqualTo(404);
    }
}
