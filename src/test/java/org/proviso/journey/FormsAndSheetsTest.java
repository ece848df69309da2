package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.type;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.UserName;
import org.proviso.database.TestOffice;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

/**
 * Forms and sheets of a running server, each opened on its page by who may, refused once, filled in and saved:
 * ResearchSheet, CallSessionSheet, ReceiveForm.
 */
@SpringBootTest(classes = Proviso.class, properties = "spring.datasource.url=" + FormsAndSheetsTest.DATABASE)
@Import(FormsAndSheetsTest.DayAfter.class)
class FormsAndSheetsTest {

    static final String DATABASE = "jdbc:h2:mem:forms-and-sheets;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);

    private static EnvelopeKey taken = new EnvelopeKey(ELECTION, new EnvelopeNumber("P-1001"));

    @TestConfiguration
    static class DayAfter {

        /** Noon in the samples' county, two days after the election. */
        @Bean
        @org.springframework.context.annotation.Primary
        Clock standingStill() {
            return Clock.fixed(Instant.parse("2026-08-06T16:00:00Z"), ZoneOffset.UTC);
        }
    }

    @Autowired
    private ApplicationContext server;

    /** The sample primary; Ada has taken one case. */
    @BeforeAll
    static void anElection() {
        TestOffice office = TestOffice.over(DATABASE);
        Primary primary = Primary.loaded(office);
        taken = primary.envelope("in_order");
        primary.taken(taken, new UserName("ada"));
        office.close();
    }

    private void on(String address, String who, Runnable act) {
        PageDriver.of(server).on(address, who, act);
    }

    @Test
    void a_reviewer_requests_research_and_must_say_what_to_find_out() {
        on("review/case/" + taken.envelopeNo(), "ada", () -> {
            press("Request research");
            TextArea asked = _get(TextArea.class, field -> field.withLabel("What to find out, and from whom"));
            asked.setValue(" ");
            press("Request research");
            assertThat(asked.isInvalid()).isTrue();
            assertThat(asked.getErrorMessage()).isEqualTo("Required. Enter what to find out.");
            assertThat(state()).isEqualTo(CaseState.IN_REVIEW);
            asked.setValue("Ask the clerk of the library which license she saw.");
            press("Request research");
            assertThat(state()).isEqualTo(CaseState.OPEN);
        });
        on(
                "review/case/" + taken.envelopeNo(),
                "ben",
                () -> assertThat(said()).contains("Ask the clerk of the library which license she saw."));
    }

    private CaseState state() {
        return server.getBean(CaseService.class).find(taken).orElseThrow().state();
    }

    @Test
    void a_member_calls_a_session_and_must_say_when() {
        on("board", "eve", () -> {
            press("Call a session");
            DateTimePicker when = _get(DateTimePicker.class);
            when.setValue(null);
            press("Call session");
            assertThat(said()).contains("Enter the date and time.");
            assertThat(sessions()).isEmpty();
            when.setValue(LocalDateTime.of(2026, 8, 7, 14, 30));
            _get(TextField.class, field -> field.withLabel("Place")).setValue("Room 12");
            press("Call session");
            assertThat(sessions()).extracting(BoardSession::place).containsExactly("Room 12");
            assertThat(sessions())
                    .extracting(BoardSession::calledFor)
                    .containsExactly(LocalDateTime.of(2026, 8, 7, 14, 30));
        });
    }

    private List<BoardSession> sessions() {
        return server.getBean(BoardService.class).sessions(ELECTION);
    }

    @Test
    void intake_receives_an_envelope_and_must_give_its_receipt_number() {
        on("intake/receive", "jon", () -> {
            type("place", "Library");
            type("style", "T06-G");
            type("envelope", "P-9001");
            press("Receive envelope");
            assertThat(said()).contains("Required.");
            assertThat(isReceived()).isFalse();
            type("receipt", ReceiptNumber.of("77000001").written());
            press("Receive envelope");
            assertThat(said()).contains("P-9001");
            assertThat(isReceived()).isTrue();
        });
    }

    private boolean isReceived() {
        return server.getBean(EnvelopeListService.class)
                .line(ELECTION, new EnvelopeNumber("P-9001"))
                .isPresent();
    }
}
