package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import com.vaadin.flow.component.UI;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.database.CopiedEnvelopes;
import org.proviso.database.CountingDataSource;
import org.proviso.database.Statements;
import org.proviso.database.TestOffice;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseService;
import org.proviso.review.WorkedPrimary;
import org.proviso.review.news.DeadlineService;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Pages of a running server, and what is kept at the end of a day, send as many statements for an election of any size. */
@SpringBootTest(classes = Proviso.class, properties = "spring.datasource.url=" + PageQueriesTest.DATABASE)
@Import(PageQueriesTest.Counted.class)
class PageQueriesTest {

    static final String DATABASE = "jdbc:h2:mem:page-queries;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";

    /** Noon in the samples' county, two days after the election. */
    private static final Instant NOW = Instant.parse("2026-08-06T16:00:00Z");

    private static final String EVERYBODY = "zoe";
    private static final int TIMES = 4;

    /** Today, a case, the canvass, and every page that lists envelopes. */
    private static final List<String> PAGES = List.of(
            "",
            "review/case/P-1012",
            "canvass",
            "canvass/closing",
            "canvass/sheet",
            "intake",
            "review",
            "review/links",
            "review/second",
            "notices",
            "board",
            "board/settled",
            "release");

    @TestConfiguration
    static class Counted {

        @Bean
        static BeanPostProcessor counting() {
            return new BeanPostProcessor() {
                @Override
                public Object postProcessAfterInitialization(Object bean, String name) {
                    return bean instanceof DataSource plain ? new CountingDataSource(plain) : bean;
                }
            };
        }

        @Bean
        @org.springframework.context.annotation.Primary
        Clock standingStill() {
            return Clock.fixed(NOW, ZoneOffset.UTC);
        }
    }

    @Autowired
    private ApplicationContext server;

    /** The sample primary after every kind of act, one batch opened, and one with something to copy made. */
    @BeforeAll
    static void anElectionAtWork() {
        TestOffice office = TestOffice.over(DATABASE);
        WorkedPrimary.in(office);
        ReleaseService release = office.the(ReleaseService.class);
        accepted(as("carl", () -> release.recordOtherBallotsComplete(new ElectionId(Primary.ID))));
        Batch made = batch(release);
        Batch begun = accepted(
                as("hal", () -> release.beginOpening(new ElectionId(Primary.ID), made.number(), made.version())));
        accepted(as("ida", () -> release.recordOpening(new ElectionId(Primary.ID), made.number(), begun.version(), 0)));
        office.the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Primary.ID));
        Staff.hire(office, EVERYBODY, Role.INTAKE, Role.REVIEWER, Role.DECIDER, Role.RELEASE_TEAM, Role.SUPERVISOR);
        office.close();
    }

    private static Batch batch(ReleaseService release) {
        return accepted(as(
                "hal",
                () -> release.makeBatch(
                        new ElectionId(Primary.ID),
                        release.waiting(new ElectionId(Primary.ID)).stream()
                                .filter(one -> !one.decision().ballot().heldApart())
                                .limit(6)
                                .map(one -> one.key().envelopeNo())
                                .collect(Collectors.toSet()),
                        "")));
    }

    /** Looked at once before it is counted: what is read once and kept is no matter of size. */
    private Statements page(String address) {
        seen(address);
        return seen(address);
    }

    private Statements seen(String address) {
        return PageDriver.of(server).as(EVERYBODY, () -> {
            UI.getCurrent().navigate("calendar");
            Statements sent = Statements.of(() -> UI.getCurrent().navigate(address));
            assertThat(UI.getCurrent().getInternals().getActiveViewLocation().getPath())
                    .isEqualTo(address);
            return sent;
        });
    }

    private Map<String, Statements> counted() {
        Map<String, Statements> counted = new LinkedHashMap<>();
        for (String address : PAGES) {
            counted.put("page " + address, page(address));
        }
        counted.put(
                "keeping the day's figures",
                as(
                        EVERYBODY,
                        () -> Statements.of(() -> server.getBean(CanvassService.class)
                                .keepDailyFigures(new ElectionId(Primary.ID), Map.of()))));
        return counted;
    }

    @Test
    void a_page_of_a_larger_election_asks_the_database_no_oftener() {
        Map<String, Statements> small = counted();
        new CopiedEnvelopes(server.getBean(JdbcClient.class)).all(TIMES - 1);
        Map<String, Statements> large = counted();
        small.forEach((what, before) -> assertThat(large.get(what).moreThan(before))
                .as(what + ", " + before.all() + " statements while it was small, "
                        + large.get(what).all() + " now; oftener")
                .isEmpty());
        assertThat(server.getBean(JdbcClient.class)
                        .sql("select count(*) from envelope_case")
                        .query(Integer.class)
                        .single())
                .isEqualTo(60 * TIMES);
    }
}
