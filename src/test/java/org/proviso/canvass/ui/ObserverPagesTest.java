package org.proviso.canvass.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.access.ui.PlainBrowser;
import org.proviso.browser.RunningOffice;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.intake.IntakeService;
import org.proviso.ui.frame.OfficeElections;

/** What an observer reads of the sample election, and what none of the pages may say. */
class ObserverPagesTest {

    private static RunningOffice office;
    private static PlainBrowser observer;
    private static List<Envelope> envelopes;

    @BeforeAll
    static void signIn() {
        office = RunningOffice.shared();
        observer = new PlainBrowser(Integer.parseInt(office.address().replaceAll(".*:", "")));
        HttpResponse<String> signedIn = observer.signIn("observer", "demo-only-password");
        assertThat(PlainBrowser.target(signedIn)).as("an observer begins here").isEqualTo("/observe");
        ElectionId election = office.the(OfficeElections.class).all().get(0).id();
        envelopes = office.the(IntakeService.class).envelopes(election);
    }

    private static String page(String path) {
        HttpResponse<String> answer = observer.get(path);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'none'");
        return answer.body();
    }

    /** Everything of an envelope that says whose it is. */
    private static List<String> whose(Envelope envelope) {
        Envelope.Affirmation said = envelope.affirmation();
        List<String> words = new ArrayList<>(List.of(ReceiptNumber.text(envelope.receiptNo())));
        words.add(said.name().first() + " " + said.name().last());
        words.add(said.name().last() + ", " + said.name().first());
        if (said.birthDate() != null) {
            words.add(said.birthDate().toString());
            words.add(DateWords.date(said.birthDate()));
        }
        Stream.of(said.residence().line(), said.driversLicense(), said.phone(), said.email())
                .filter(text -> text.length() > 5)
                .forEach(words::add);
        words.removeIf(word -> word.replace(",", "").isBlank());
        return words;
    }

    @Test
    void every_envelope_has_a_page_and_none_says_whose_it_is() {
        for (Envelope envelope : envelopes) {
            String page = page("/observe/cases/" + envelope.envelopeNo());
            assertThat(page).contains(envelope.envelopeNo().value(), "What the law asks");
            assertThat(page).doesNotContainIgnoringCase(whose(envelope).toArray(String[]::new));
        }
    }

    @Test
    void the_list_the_ledger_and_the_figures_name_nobody() {
        String all = page("/observe")
                + page("/observe/ledger")
                + page("/observe/cases")
                + page("/observe/cases?page=2")
                + page("/observe/cases?page=3");
        for (Envelope envelope : envelopes) {
            assertThat(all).contains(">" + envelope.envelopeNo() + "<");
            assertThat(all).doesNotContainIgnoringCase(whose(envelope).toArray(String[]::new));
        }
    }

    @Test
    void a_page_past_the_last_is_the_last_and_an_envelope_that_never_came_is_not_found() {
        assertThat(page("/observe/cases?page=99")).contains("Page 3 of 3");
        assertThat(observer.get("/observe/cases/G-9999").statusCode()).isEqualTo(404);
        assertThat(observer.get("/observe/cases/%20").statusCode()).isEqualTo(404);
    }

    @Test
    void a_stranger_is_asked_to_sign_in() {
        PlainBrowser stranger =
                new PlainBrowser(Integer.parseInt(office.address().replaceAll(".*:", "")));
        assertThat(PlainBrowser.target(stranger.get("/observe/cases"))).isEqualTo("/sign-in");
    }
}
