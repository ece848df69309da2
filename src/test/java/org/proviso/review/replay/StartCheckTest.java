package org.proviso.review.replay;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerService;
import org.slf4j.LoggerFactory;

/** What a server says at its start after one that was killed. */
class StartCheckTest {

    private final Logger log = (Logger) LoggerFactory.getLogger(StartCheck.class);
    private final ListAppender<ILoggingEvent> said = new ListAppender<>();

    @BeforeEach
    void listen() {
        said.start();
        log.addAppender(said);
    }

    @AfterEach
    void listenNoMore() {
        log.detachAppender(said);
    }

    private static StartCheck server(TestOffice office) {
        return new StartCheck(
                office.the(ServerRunStore.class),
                office.the(ElectionService.class),
                office.the(LedgerService.class),
                office.the(CaseReplay.class),
                office.the(Clock.class));
    }

    private List<String> lines() {
        return said.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
    }

    @OnADatabase
    void a_server_after_one_that_was_stopped_says_nothing(TestOffice office) {
        StartCheck first = server(office);
        first.start();
        first.stop();
        server(office).start();
        assertThat(lines()).isEmpty();
    }

    @OnADatabase
    void a_server_after_one_that_was_killed_says_that_all_is_whole(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.taken(primary.envelope("in_order"), new UserName("ada"));
        server(office).start();
        server(office).start();
        assertThat(lines())
                .containsExactly(
                        "The server was not stopped last time. All chains of the ledger and all cases are whole.");
    }

    @OnADatabase
    void half_an_act_that_was_left_is_named_with_the_way_on(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        primary.taken(key, new UserName("ada"));
        server(office).start();
        office.jdbc()
                .sql("update envelope_case set version = version + 1 where envelope_no = ?")
                .param(key.envelopeNo())
                .update();
        office.jdbc()
                .sql("update ledger_head set sequence = sequence + 1 where chain = 'office'")
                .update();
        server(office).start();
        assertThat(lines())
                .singleElement()
                .asString()
                .contains("Chain office: the chain ends at entry")
                .contains(key.envelopeNo().value())
                .contains("put back the last backup");
    }
}
