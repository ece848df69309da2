package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ProposalService;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

/** An envelope on its way to another county and back: ProposeEndSheet, CountyReceiptSheet, ReopenEndedSheet, the form. */
@OnPages
class SentOnPageTest {

    @Autowired
    private PageDriver pages;

    @Autowired
    private WebApplicationContext server;

    private static EnvelopeKey proposedAndWithdrawn() {
        EnvelopeKey key = PagesOffice.primary().envelope("other_county");
        PagesOffice.free(key.envelopeNo().value());
        PagesOffice.primary().reviewing(key).proposed();
        PagesOffice.done("ada", () -> PagesOffice.the(ProposalService.class).withdraw(key, PagesOffice.version(key)));
        return key;
    }

    private void onTheCase(EnvelopeKey key, String who, Runnable act) {
        pages.on("review/case/" + key.envelopeNo(), who, act);
    }

    private MockHttpServletResponse form(EnvelopeKey key) {
        return Office.as("ada", () -> {
            try {
                return MockMvcBuilders.webAppContextSetup(server)
                        .build()
                        .perform(get("/review/sent-on/" + key.electionId() + "/" + key.envelopeNo()))
                        .andReturn()
                        .getResponse();
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        });
    }

    private static String text(MockHttpServletResponse page) {
        try {
            return page.getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void an_envelope_is_sent_on_by_two_gets_its_receipt_and_comes_back() {
        EnvelopeKey key = proposedAndWithdrawn();
        String number = key.envelopeNo().value();
        onTheCase(key, "ada", () -> {
            press("Propose to send on");
            press("Submit proposal");
            assertThat(marked("County it goes to")).isEqualTo("Required. Enter the county it goes to.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            fill("County it goes to", "Birch County");
            press("Submit proposal");
        });
        onTheCase(key, "ada", () -> assertThat(said()).contains("proposed: send on to Birch County."));
        assertThat(form(key).getStatus()).as("it is still here").isEqualTo(404);
        onTheCase(key, "ben", () -> assertThat(said()).contains("Waiting for second review.", "Start second review"));
        pages.on(
                "review/second/" + number,
                "ada",
                () -> assertThat(said()).contains("You proposed this. A different reviewer confirms it."));
        pages.on("review/second/" + number, "ben", () -> {
            assertThat(said()).contains("Legal reference: Example Election Code (invented) 2.6 (2020).");
            press("Send back with a note");
            press("Send back");
            assertThat(said()).contains("Write a note to send the proposal back.");
            press("Cancel");
            press("Confirm: send on");
            press("Confirm");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.SENT_ON);
        theFormSaysWhatWasFoundAndNothingOfTheVoter(key);
        pages.on("", "ada", () -> assertThat(said()).contains("Envelope sent on without receipt", "Open Sent on"));
        pages.on("review/sent-on", "ada", () -> assertThat(said()).contains(number, "Birch County", "None yet"));
        theReceiptIsRecorded(key);
        itComesBack(key);
    }

    private void theFormSaysWhatWasFoundAndNothingOfTheVoter(EnvelopeKey key) {
        String form = text(form(key));
        assertThat(form)
                .contains(key.envelopeNo().value(), "Birch County", "registered in another county")
                .contains("Example Election Code (invented) 2.6 (2020)", "Proposed by", "Received by");
        var affirmation = PagesOffice.the(IntakeService.class)
                .envelope(key.electionId(), key.envelopeNo())
                .orElseThrow()
                .affirmation();
        assertThat(form).doesNotContain(affirmation.name().last());
    }

    private void theReceiptIsRecorded(EnvelopeKey key) {
        onTheCase(key, "ada", () -> {
            assertThat(said()).contains("Sent on to Birch County. Not decided here. No receipt from there yet.");
            press("Record receipt");
            fill("Day it was received there", "8/60/2026");
            press("Record receipt");
            assertThat(marked("Day it was received there")).startsWith("Enter the month, day and year");
            assertThat(marked("Received there by")).isEqualTo("Required. Enter who received it there.");
            fill("Day it was received there", "8/7/2026");
            fill("Received there by", "Jane Roe");
            press("Record receipt");
            assertThat(said()).contains("08/07/2026 has not come yet.");
            fill("Day it was received there", "8/6/2026");
            fill("Number the other county gave it (optional)", "B-77");
            press("Record receipt");
            assertThat(said()).contains("was received there on 08/06/2026 by Jane Roe, number B-77.");
        });
        pages.on(
                "review/sent-on",
                "eve",
                () -> assertThat(said())
                        .contains("Every envelope that was sent on has its receipt.", "Jane Roe, B-77"));
    }

    private void itComesBack(EnvelopeKey key) {
        onTheCase(key, "ada", () -> assertThat(said()).doesNotContain("Reopen"));
        onTheCase(key, "eve", () -> {
            press("Reopen");
            assertThat(said()).contains("by Jane Roe, number B-77. The reopening sets this receipt aside.");
            press("Reopen case");
            assertThat(marked("Reason for reopening")).isEqualTo("Required. Your reason is kept with the record.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.SENT_ON);
            fill("Reason for reopening", "The other county sent it back.");
            press("Reopen case");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.OPEN);
        assertThat(form(key).getStatus()).isEqualTo(404);
    }
}
