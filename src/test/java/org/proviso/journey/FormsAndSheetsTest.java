package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import com.github.mvysny.fakeservlet.FakeRequest;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.github.mvysny.kaributesting.v10.mock.MockedUI;
import com.github.mvysny.kaributesting.v10.spring.MockSpringServlet;
import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinServletRequest;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.database.TestOffice;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.ui.field.ActButton;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.context.annotation.Import;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.util.ClassUtils;

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

    /** What one of the staff does on a page. */
    private void on(String address, String who, Runnable act) {
        as(who, () -> {
            MockVaadin.setup(MockedUI::new, new MockSpringServlet(routes(), server, MockedUI::new));
            try {
                FakeRequest request =
                        (FakeRequest) VaadinServletRequest.getCurrent().getRequest();
                request.setUserPrincipalInt(SecurityContextHolder.getContext().getAuthentication());
                UI.getCurrent().navigate(address);
                act.run();
                return who;
            } finally {
                MockVaadin.tearDown();
            }
        });
    }

    private static Routes routes() {
        ClassPathScanningCandidateComponentProvider pages = new ClassPathScanningCandidateComponentProvider(false);
        pages.addIncludeFilter(new AnnotationTypeFilter(Route.class));
        Set<Class<? extends Component>> routes = pages.findCandidateComponents("org.proviso").stream()
                .map(page -> ClassUtils.resolveClassName(String.valueOf(page.getBeanClassName()), null)
                        .<Component>asSubclass(Component.class))
                .collect(Collectors.toSet());
        return new Routes(routes, Set.of(), true);
    }

    private static String name(ActButton button) {
        return Optional.ofNullable(button.getElement().getAttribute("aria-label"))
                .orElse(button.getElement().getTextRecursively());
    }

    /** Presses the button of that name that came last: a sheet lies over its page. */
    private static void press(String name) {
        List<ActButton> found = _find(ActButton.class).stream()
                .filter(button -> name(button).startsWith(name))
                .toList();
        assertThat(found).as(name).isNotEmpty();
        ActButton last = found.get(found.size() - 1);
        ComponentUtil.fireEvent(last, new ClickEvent<>(last));
    }

    private static void type(String field, String text) {
        _get(Input.class, wanted -> wanted.withId(field)).setValue(text);
    }

    /** The words of the page, and of the sheets over it. */
    private static String said() {
        return Stream.concat(
                        Stream.of(UI.getCurrent()),
                        UI.getCurrent().getInternals().getActiveRouterTargetsChain().stream())
                .map(part -> part.getElement().getTextRecursively())
                .collect(Collectors.joining(" "));
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
            type("receipt", CheckedReceipt.of("77000001").value());
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
