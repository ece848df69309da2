package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.client.TestRestTemplate;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.HttpEntity;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** The server starts, its start page is open to everyone, and whatever else is closed. */
@SpringBootTest(classes = Proviso.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class StartPageTest {

    @Autowired
    private TestRestTemplate browser;

    @Test
    void the_start_page_answers_without_a_sign_in_and_says_its_language() {
        ResponseEntity<String> page = browser.getForEntity("/", String.class);
        assertThat(page.getStatusCode()).isEqualTo(HttpStatus.OK);
        assertThat(page.getBody()).contains("<html lang=\"en\"");
    }

    @Test
    void a_voter_can_ask_before_an_election_is_loaded() {
        ResponseEntity<String> page = browser.getForEntity("/status", String.class);
        assertThat(page.getStatusCode()).isEqualTo(HttpStatus.OK);
        assertThat(page.getBody()).contains("Look up your provisional ballot", "name=\"receipt\"");
    }

    @Test
    void what_a_stranger_gets_first_carries_the_strict_security_headers() {
        HttpHeaders headers = browser.getForEntity("/", String.class).getHeaders();
        assertThat(headers.getFirst("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(headers.getFirst("X-Frame-Options")).isEqualTo("DENY");
        assertThat(headers.getFirst("Referrer-Policy")).isEqualTo("same-origin");
        assertThat(headers.getFirst("Content-Security-Policy"))
                .contains("default-src 'none'", "frame-ancestors 'none'", "form-action 'self'");
        assertThat(headers.get("Set-Cookie")).allMatch(cookie -> cookie.contains("HttpOnly; SameSite=Strict"));
    }

    @Test
    void whoever_asks_for_an_address_that_is_not_open_has_to_sign_in() {
        assertThat(browser.getForEntity("/envelopes", String.class).getBody()).contains("<h1>Sign in</h1>");
    }

    @Test
    void a_stranger_can_send_no_file_anywhere() {
        for (String address : new String[] {"/", "/status", "/sign-in", "/VAADIN/dynamic/resource/1/x/upload"}) {
            HttpHeaders headers = new HttpHeaders();
            headers.setContentType(MediaType.MULTIPART_FORM_DATA);
            MultiValueMap<String, Object> form = new LinkedMultiValueMap<>();
            form.add("file", new ByteArrayResource(new byte[100]));
            assertThat(browser.postForEntity(address, new HttpEntity<>(form, headers), String.class)
                            .getStatusCode())
                    .as(address)
                    .isEqualTo(HttpStatus.FORBIDDEN);
        }
    }

    @Test
    void the_fonts_and_the_icon_come_from_the_server_itself() {
        assertThat(browser.getForEntity("/", String.class).getBody()).contains("themes/proviso/mark.svg");
        assertThat(browser.getForEntity("/themes/proviso/mark.svg", String.class)
                        .getStatusCode())
                .isEqualTo(HttpStatus.OK);
        assertThat(browser.getForEntity("/themes/proviso/fonts/serif.woff2", byte[].class)
                        .getStatusCode())
                .isEqualTo(HttpStatus.OK);
    }
}
