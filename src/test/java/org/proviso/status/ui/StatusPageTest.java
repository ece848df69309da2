package org.proviso.status.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.ui.PlainBrowser;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.status.StatusLines;
import org.proviso.status.VoterAsk;
import org.proviso.status.VoterCaseState;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** The voter's page over HTTP: what it says, and what it never gives away. */
@SpringBootTest(classes = Proviso.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class StatusPageTest {

    private static final String RECEIPT = "1111-2222-2";
    private static final LocalDate BORN = LocalDate.of(1984, 3, 12);
    private static final LocalDateTime UNTIL = LocalDateTime.of(2026, 8, 14, 17, 0);

    @Autowired
    private ApplicationContext server;

    @LocalServerPort
    private int port;

    private PlainBrowser browser;

    @BeforeEach
    void open() {
        browser = new PlainBrowser(port);
        StatusLines.loadElection(server);
        line(RECEIPT, VoterCaseState.WAITS_FOR_YOU, List.of(), List.of(new VoterAsk(Ask.IDENTIFICATION, UNTIL)));
    }

    private void line(String receipt, VoterCaseState state, List<Reason> reasons, List<VoterAsk> asks) {
        StatusLines.put(server, new ReceiptNumber(receipt), BORN, state, reasons, asks);
    }

    private HttpResponse<String> lookUp(String receipt, String month, String day, String year) {
        return lookUp(receipt, month, day, year, "en");
    }

    private HttpResponse<String> lookUp(String receipt, String month, String day, String year, String language) {
        Map<String, String> fields =
                new HashMap<>(Map.of("receipt", receipt, "month", month, "day", day, "year", year));
        fields.put("lang", language);
        return browser.post("/status", fields);
    }

    @Test
    void the_answer_says_first_what_to_do_and_by_when() {
        HttpResponse<String> answer = lookUp(RECEIPT, "3", "12", "1984");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains(
                        "We need one thing from you</h1>",
                        "Show identification</h2>",
                        "It must reach us by <span class=\"until\">Friday, August 14, 2026, 5:00\u00a0pm</span>",
                        "Tamarack County Election Office",
                        "You voted at Library on Tuesday, August 4, 2026. We received your ballot from there. It is safe"
                                + " and still sealed.",
                        "We found your registration. What is missing is identification.",
                        "Your status has not changed since Thursday, August 6, 2026.",
                        "It cannot say how you voted");
        assertThat(answer.body().split("<h1", -1)).hasSize(2);
    }

    @Test
    void blanks_dashes_and_capitals_do_not_matter() {
        assertThat(lookUp(" 1111 2222 2 ", "03", " 12", "1984").body()).contains("We need one thing from you");
        assertThat(lookUp("11112-22-22", "3", "12", "1984").body()).contains("We need one thing from you");
    }

    @Test
    void a_wrong_number_and_a_wrong_date_get_the_same_answer_to_the_letter() {
        HttpResponse<String> wrongDate = lookUp(RECEIPT, "3", "13", "1984");
        HttpResponse<String> wrongNumber = lookUp("9999-0000-8", "3", "12", "1984");
        assertThat(wrongDate.statusCode()).isEqualTo(wrongNumber.statusCode());
        assertThat(wrongDate.body().replace("value=\"13\"", "").replace(RECEIPT, ""))
                .isEqualTo(wrongNumber.body().replace("value=\"12\"", "").replace("9999-0000-8", ""))
                .contains("We found nothing", "Check the number", "href=\"tel:5550100\"", ">555-0100<")
                .contains("href=\"mailto:");
    }

    @Test
    void each_ask_has_its_own_deadline_and_the_page_says_where_to_go() {
        line(
                RECEIPT,
                VoterCaseState.WAITS_FOR_YOU,
                List.of(),
                List.of(
                        new VoterAsk(Ask.SIGNATURE, UNTIL.minusDays(3)),
                        new VoterAsk(Ask.IDENTIFICATION, UNTIL),
                        new VoterAsk(Ask.REGISTRATION, null)));
        assertThat(lookUp(RECEIPT, "3", "12", "1984").body())
                .contains(
                        "We need something from you</h1>",
                        "Tuesday, August 11, 2026, 5:00\u00a0pm",
                        "Friday, August 14, 2026, 5:00\u00a0pm",
                        "Call us to ask for the deadline.",
                        "What is missing is your signature, identification and part of your registration.",
                        "<a href=\"#papers\">Which papers we accept, and the statement</a>",
                        "<a href=\"#where\">",
                        "1 Courthouse Sq, Millbrook 49871",
                        "Monday to Friday, 8 am to 5 pm");
    }

    @Test
    void a_slip_of_the_number_is_said_whatever_is_in_the_table() {
        String slip = "This number has a mistake: one digit is wrong, or two are swapped.";
        assertThat(lookUp("1111-2222-3", "3", "12", "1984").body()).contains("We found nothing", slip);
        assertThat(lookUp("1111-2222", "3", "12", "1984").body())
                .contains("The number on your receipt has nine digits")
                .doesNotContain(slip);
        assertThat(lookUp(RECEIPT, "3", "13", "1984").body())
                .contains("We found nothing")
                .doesNotContain(slip);
        assertThat(lookUp("OLD-7", "3", "12", "1984").body())
                .contains("We found nothing")
                .doesNotContain(slip, "nine digits. Check");
        line("1111-2222-3", VoterCaseState.COUNTED, List.of(), List.of());
        assertThat(lookUp("1111-2222-3", "3", "12", "1984").body())
                .contains("Your ballot was counted")
                .doesNotContain(slip);
        StatusLines.remove(server, new ReceiptNumber("1111-2222-3"));
    }

    @Test
    void the_keyboard_for_numbers_comes_up_where_receipts_have_only_digits() {
        assertThat(browser.get("/status").body())
                .containsPattern("<input id=\"receipt\"[^>]*inputmode=\"numeric\"")
                .contains("Nine digits, for example");
    }

    @Test
    void a_decision_is_told_with_its_mark_and_its_reason() {
        line("REJE-CTED", VoterCaseState.REJECTED, List.of(Reason.REGISTERED_LATE), List.of());
        assertThat(lookUp("REJE-CTED", "3", "12", "1984").body())
                .contains(
                        "<span class=\"mark\" aria-hidden=\"true\"></span>Your ballot was not counted</h1>",
                        "You registered after the last day to register for this election.");
        line("COUN-TED2", VoterCaseState.COUNTED, List.of(), List.of());
        assertThat(lookUp("COUN-TED2", "3", "12", "1984").body())
                .contains("<span class=\"mark full\" aria-hidden=\"true\"></span>Your ballot was counted</h1>");
    }

    @Test
    void the_page_speaks_spanish_without_a_cookie() {
        line("REJE-CTE3", VoterCaseState.REJECTED, List.of(Reason.REGISTERED_LATE), List.of());
        HttpResponse<String> answer = lookUp("REJE-CTE3", "3", "12", "1984", "es");
        assertThat(answer.body())
                .contains(
                        "<html lang=\"es\"",
                        "Su boleta no se contó</h1>",
                        "Usted se inscribió después del último día",
                        "El jueves 6 de agosto de 2026 se decidió");
        assertThat(browser.get("/status?lang=es").body()).contains("Busque su boleta provisional", "lang=en");
        assertThat(browser.hasCookie("XSRF-TOKEN")).isFalse();
    }

    @Test
    void no_cookie_no_script_no_cache_and_a_strict_policy() {
        for (HttpResponse<String> page : List.of(browser.get("/status"), lookUp(RECEIPT, "3", "12", "1984"))) {
            assertThat(page.headers().firstValue("Set-Cookie")).isEmpty();
            assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                    .startsWith("default-src 'none'; style-src 'self';")
                    .doesNotContain("unsafe", "script-src");
            assertThat(page.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
            assertThat(page.body()).doesNotContain("<script", "style=\"", "http://", "https://");
        }
    }

    @Test
    void what_is_typed_in_an_address_is_not_looked_up() {
        assertThat(browser.get("/status?receipt=1111-2222-2&month=3&day=12&year=1984")
                        .body())
                .contains("Look up your provisional ballot</h1>")
                .doesNotContain("1111-2222-2\"");
    }

    @Test
    void an_unclear_field_is_named_in_words() {
        HttpResponse<String> page = lookUp(RECEIPT, "2", "30", "1984");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("This date does not exist", "aria-invalid=\"true\"");
        assertThat(lookUp(RECEIPT, "", "", "").body())
                .contains("Enter your birth date: the month, the day and a four-digit year.", "aria-invalid=\"true\"")
                .doesNotContain("This date does not exist");
        assertThat(lookUp(" - ", "2", "3", "84").body()).contains("Enter the number on your receipt");
        assertThat(lookUp("<b>\"x", "2", "30", "1984").body())
                .contains("&lt;b&gt;&quot;x")
                .doesNotContain("<b>\"x");
    }

    @Test
    void after_ten_look_ups_of_a_receipt_the_page_says_when_to_try_again() {
        for (int i = 1; i <= 10; i++) {
            assertThat(lookUp("GUES-SED2", "1", String.valueOf(i), "1984").statusCode())
                    .isEqualTo(200);
        }
        HttpResponse<String> refused = lookUp("gues sed2", "1", "11", "1984");
        assertThat(refused.statusCode()).isEqualTo(429);
        assertThat(refused.body()).containsPattern("Try again in 1[45] minutes");
        assertThat(refused.headers().firstValue("Retry-After").orElse("")).matches("840|900");
    }
}
