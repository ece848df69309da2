package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.choose;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.election.rules.RulingService;
import org.proviso.election.rules.SignRuling;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.mail.MailListService;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

/** The page of lists for the mail desk: DeskAnswersSheet, CorrectAnswerSheet, the file of a list. */
@OnPages
class MailDeskPageTest {

    private static final String NUMBER = "P-1004";

    @Autowired
    private PageDriver pages;

    @Autowired
    private WebApplicationContext server;

    /** A county ruling lets the provisional ballot prevail, and the voter's mail ballot came back. */
    private static void decidedWithAMailBallotBack() {
        RulingService rulings = PagesOffice.the(RulingService.class);
        int ruling = PagesOffice.done(
                "carl",
                () -> rulings.record(new SignRuling(
                        PagesOffice.ELECTION,
                        "mail.returned",
                        "gives_way",
                        "County Clerk",
                        LocalDate.of(2026, 8, 5),
                        "counsel's letter")));
        PagesOffice.done("dora", () -> rulings.putInForce(PagesOffice.ELECTION, ruling));
        EnvelopeKey key = PagesOffice.taken(NUMBER);
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .answer(new RecordAnswer(
                                key,
                                PagesOffice.version(key),
                                Fact.MAIL_BALLOTS,
                                Set.of(MailBallotFact.RETURNED),
                                "The mail desk has it on its shelf.",
                                null)));
        new Deciding(PagesOffice.primary()).settled(PagesOffice.free(NUMBER));
    }

    private MockHttpServletResponse file(String who, int list) {
        return Office.as(who, () -> {
            try {
                return MockMvcBuilders.webAppContextSetup(server)
                        .build()
                        .perform(get("/review/mail-desk/" + Primary.ID + "/" + list))
                        .andReturn()
                        .getResponse();
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        });
    }

    @Test
    void a_list_is_sent_answered_and_corrected() throws Exception {
        pages.on(
                "review/mail-desk",
                "ada",
                () -> assertThat(said()).contains("The rules of this election ask nothing of the mail desk."));
        decidedWithAMailBallotBack();
        pages.on("", "ada", () -> assertThat(said()).contains("Line for the mail desk", "Open Mail desk"));
        pages.on("review/sent-on", "ada", () -> assertThat(said()).contains("Lists for the mail desk"));
        pages.on(
                "release",
                "hal",
                () -> assertThat(said())
                        .contains("Kept closed for now", NUMBER, "The mail desk was not told yet to refuse"));
        pages.on(
                "review/case/" + NUMBER,
                "eve",
                () -> assertThat(said()).contains("Not opened yet: the mail desk was not told yet to refuse"));
        pages.on(
                "canvass/closing",
                "carl",
                () -> assertThat(said()).contains("1envelope that counts, kept closed until the mail desk answers"));
        assertThat(file("ada", 1).getStatus()).as("no list was sent").isEqualTo(404);
        pages.on("review/mail-desk", "ada", () -> {
            assertThat(said()).contains("1 line to send.", NUMBER, "refuse the mail ballot");
            press("Send list 1");
            press("Record as sent");
            assertThat(MessageLine.words()).isEqualTo("List 1 recorded as sent.");
            assertThat(said()).contains("1 line without an answer.", "None yet", "Download CSV");
        });
        assertThat(file("ada", 1).getContentAsString())
                .startsWith("list_no,line_no,what,voter_id,name")
                .contains(NUMBER);
        answers();
        corrected();
        pages.on("canvass/closing", "carl", () -> assertThat(said()).doesNotContain("until the mail desk answers"));
        pages.on(
                "release",
                "hal",
                () -> assertThat(said())
                        .doesNotContain("Kept closed for now")
                        .contains("1 envelope decided to count and not in a batch"));
        pages.on("review/case/" + NUMBER, "eve", () -> assertThat(said()).doesNotContain("Not opened yet"));
    }

    private void answers() {
        pages.on("review/mail-desk", "ben", () -> {
            press("Record answers to list 1");
            press("Record answers");
            assertThat(marked("Day the mail desk answered")).startsWith("Enter the month, day and year");
            assertThat(marked("Answered there by")).isEqualTo("Required. Enter who answered at the mail desk.");
            fill("Day the mail desk answered", "8/7/2026");
            fill("Answered there by", "Jane Roe");
            press("Record answers");
            assertThat(said()).contains("Choose the answer to at least one line.");
            choose("line-1", "counted");
            press("Record answers");
            assertThat(said()).contains("08/07/2026 has not come yet.");
            fill("Day the mail desk answered", "8/6/2026");
            press("Record answers");
            assertThat(MessageLine.words()).isEqualTo("List 1: answers to 1 line recorded.");
            assertThat(said()).contains("already counted, 08/06/2026, Jane Roe");
        });
        pages.on("board/contradicted", "eve", () -> assertThat(said()).contains(NUMBER));
    }

    private void corrected() {
        pages.on("review/mail-desk", "ben", () -> {
            press("Correct answer: line 1 of list 1");
            choose("answer", "refused");
            press("Correct answer");
            assertThat(said()).contains("Required. Enter why the answer is corrected.");
            fill("Reason for the correction", "It was another voter's.");
            press("Correct answer");
            assertThat(MessageLine.words()).isEqualTo("Line 1 of list 1: answer corrected.");
            assertThat(said())
                    .contains("refused, not counted", "(corrected: It was another voter's.)")
                    .contains("Nothing is left to tell the mail desk, and it has answered every line.");
        });
        pages.on("board/contradicted", "eve", () -> assertThat(said()).doesNotContain(NUMBER));
        assertThat(Office.as("ada", () -> PagesOffice.the(MailListService.class).open(PagesOffice.ELECTION)))
                .isZero();
    }
}
