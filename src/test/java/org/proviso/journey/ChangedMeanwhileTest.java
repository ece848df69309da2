package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.text;
import static org.proviso.journey.PageDriver.type;
import static org.proviso.journey.PageDriver.value;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKind;
import org.proviso.board.agenda.AgendaService;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.UserName;
import org.proviso.intake.IntakeService;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.keying.SaveKeyingDraft;
import org.proviso.intake.numbers.CorrectReceipt;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.ui.field.ChangedMeanwhile;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Somebody changes the same thing while a sheet is open: nothing typed is lost, the sheet says so, and loads the page as it
 * is now. One sheet of each kind; all of them are an ActDialog.
 */
@OnPages
class ChangedMeanwhileTest {

    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 8, 6, 9, 30);

    @Autowired
    private PageDriver pages;

    @Test
    void a_sheet_over_a_case() {
        EnvelopeKey key = PagesOffice.linked("P-1003");
        String asked = "What to find out";
        pages.on("review/case/P-1003", "ada", () -> {
            press("Request research");
            fill("Whom you ask", "Depot Street Library");
            fill(asked, "Ask the clerk which license she saw.");
            PagesOffice.done(
                    "ada",
                    () -> PagesOffice.the(AnswerService.class)
                            .recordSignatureComparison(new SignatureComparison(
                                    key, PagesOffice.version(key), SignatureComparison.Finding.AGREES, "")));
            press("Request research");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value(asked)).isEqualTo("Ask the clerk which license she saw.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            press("Load the new version");
            assertThat(said()).doesNotContain(ChangedMeanwhile.WORDS);
            press("Request research");
            fill("Whom you ask", "Depot Street Library");
            fill(asked, "Ask the clerk which license she saw.");
            press("Request research");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.OPEN);
    }

    @Test
    void a_sheet_of_the_notices() {
        EnvelopeKey key = PagesOffice.worked("P-1013");
        NoticeService notices = PagesOffice.the(NoticeService.class);
        Notice notice = as("jon", () -> notices.notices(key)).get(0);
        pages.on("notices/letter/P-1013/" + notice.number(), "jon", () -> {
            press("Log notice");
            fill("How", NoticeChannel.PHONE);
            fill("Date and time sent, or voter reached", MORNING);
            PagesOffice.done(
                    "carl",
                    () -> notices.logSent(new LogNoticeSent(
                            key, notice.number(), notice.version(), NoticeChannel.MAIL, MORNING.minusMinutes(5))));
            press("Log notice");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value("Date and time sent, or voter reached")).isEqualTo(MORNING);
            press("Load the new version");
            press("Log notice");
            fill("Date and time sent, or voter reached", MORNING);
            press("Log notice");
        });
        assertThat(as("jon", () -> notices.attempts(key, notice.number()))).hasSize(2);
    }

    @Test
    void a_sheet_of_the_board() {
        EnvelopeKey key = PagesOffice.worked("P-1005");
        PagesOffice.done(
                "ben",
                () -> PagesOffice.the(ProposalService.class).secondReview(key, PagesOffice.version(key), true, ""));
        BoardService board = PagesOffice.the(BoardService.class);
        BoardSession session = PagesOffice.done(
                "eve",
                () -> board.callSession(new CallSession(
                        PagesOffice.ELECTION, BodyKind.BOARD, LocalDateTime.of(2026, 8, 6, 12, 0), "Hall 3")));
        PagesOffice.done("eve", () -> board.open(session.key(), session.version()));
        PagesOffice.done("eve", () -> board.recordArrival(session.key(), new UserName("eve")));
        PagesOffice.done(
                "eve",
                () -> PagesOffice.the(AgendaService.class).addToAgenda(session.key(), List.of(key.envelopeNo())));
        String why = "Reason (required to differ from the recommendation, table or reopen)";
        pages.on("board/session/" + session.key().sessionNo(), "eve", () -> {
            press("Pull out P-1005");
            press("Move P-1005");
            fill("Outcome", MotionKind.TABLE);
            fill(why, "The voter is on the way.");
            PagesOffice.primary()
                    .office()
                    .services()
                    .jdbc()
                    .sql("update envelope_case set version = version + 1 where envelope_no = 'P-1005'")
                    .update();
            press("Make motion");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value(why)).isEqualTo("The voter is on the way.");
        });
    }

    @Test
    void a_sheet_and_a_form_of_intake() {
        EnvelopeNumber number = new EnvelopeNumber("P-9301");
        String receipt = CheckedReceipt.of("77000301").value();
        pages.on("intake/receive", "jon", () -> {
            type("place", "Depot Street Library");
            type("style", "T06-G");
            type("envelope", number.value());
            press("Receive envelope");
            press("No receipt number");
            press("Receive envelope");
        });
        assertThat(PagesOffice.the(IntakeService.class).envelope(PagesOffice.ELECTION, number))
                .isPresent();
        pages.on("intake", "jon", () -> {
            press("Confirm P-9301");
            fill("Reason", "None is printed on it.");
            PagesOffice.done(
                    "carl",
                    () -> PagesOffice.the(NumberCheckService.class)
                            .correct(new CorrectReceipt(
                                    PagesOffice.ELECTION,
                                    number,
                                    0,
                                    new ReceiptNumber(receipt),
                                    false,
                                    "It is on the back.")));
            press("Confirm as it is");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value("Reason")).isEqualTo("None is printed on it.");
            press("Load the new version");
            assertThat(said()).doesNotContain("Confirm P-9301");
        });
        pages.on("intake/key/P-9301", "jon", () -> {
            type("last_name", "Kell");
            savedElsewhere(number);
            type("first_name", "Ada");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(text("first_name")).isEqualTo("Ada");
            press("Load the new version");
            assertThat(text("last_name")).isEqualTo("Elsewhere");
        });
    }

    private static void savedElsewhere(EnvelopeNumber number) {
        KeyingService keying = PagesOffice.the(KeyingService.class);
        PagesOffice.done("jon", () -> {
            int version =
                    keying.draft(PagesOffice.ELECTION, number).orElseThrow().version();
            return keying.saveDraft(
                    new SaveKeyingDraft(PagesOffice.ELECTION, number, version, Map.of("last_name", "Elsewhere")));
        });
    }
}
