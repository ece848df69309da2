package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.status.StatusServiceTest.DECIDING;
import static org.proviso.status.StatusServiceTest.confirm;
import static org.proviso.status.StatusServiceTest.envelope;
import static org.proviso.status.StatusServiceTest.loaded;
import static org.proviso.status.StatusServiceTest.own;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.proviso.board.BoardService;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;

/** How an envelope came, what was found, and when it is to be decided; the primary's day is August 4, 2026. */
class StatusPageFactsTest {

    @OnBothDatabases
    void the_page_knows_how_the_envelope_came_and_that_a_person_found_the_registration(TestOffice services) {
        Primary primary = loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        Envelope envelope = envelope(primary, key);
        Arrival arrival = own(primary, key).arrival();
        assertThat(arrival.votingLocation())
                .isEqualTo(envelope.cast().votingLocation())
                .isNotEmpty();
        assertThat(arrival.castOn()).isEqualTo(LocalDate.of(2026, 8, 4));
        assertThat(arrival.sealed()).isTrue();
        assertThat(own(primary, key).registrationFound()).isFalse();
        OfficeTime.set(services, DECIDING);
        confirm(primary, key, new VoterId(primary.truth(key).voterId()));
        assertThat(own(primary, key).registrationFound()).isTrue();
    }

    @OnBothDatabases
    void the_day_of_the_decision_is_that_of_the_next_session_or_else_the_last_by_the_rules(TestOffice services) {
        Primary primary = loaded(services);
        EnvelopeKey open = primary.envelope("in_order");
        EnvelopeKey waits = primary.envelope("no_id");
        PlannedDecision byRule = new PlannedDecision(DeciderKind.BOARD, LocalDate.of(2026, 8, 14), false);
        assertThat(own(primary, open).planned()).isEqualTo(byRule);
        call(primary, LocalDateTime.of(2026, 8, 10, 9, 0));
        assertThat(own(primary, open).planned())
                .isEqualTo(new PlannedDecision(DeciderKind.BOARD, LocalDate.of(2026, 8, 10), true));
        assertThat(own(primary, waits).planned()).isEqualTo(byRule);
        call(primary, LocalDateTime.of(2026, 8, 12, 9, 0));
        assertThat(own(primary, waits).planned())
                .isEqualTo(new PlannedDecision(DeciderKind.BOARD, LocalDate.of(2026, 8, 12), true));
        OfficeTime.set(services, LocalDateTime.of(2026, 8, 13, 12, 0));
        assertThat(own(primary, open).planned()).isEqualTo(byRule);
        OfficeTime.set(services, LocalDateTime.of(2026, 8, 15, 12, 0));
        assertThat(own(primary, open).planned()).isNull();
    }

    private static void call(Primary primary, LocalDateTime at) {
        as(
                "eve",
                () -> primary.office()
                        .the(BoardService.class)
                        .callSession(new CallSession(new ElectionId(Primary.ID), BodyKind.BOARD, at, "Courthouse")));
    }

    @OnBothDatabases
    void a_rebuild_brings_the_sessions_back(TestOffice services) {
        Primary primary = loaded(services);
        call(primary, LocalDateTime.of(2026, 8, 10, 9, 0));
        LookupResult.Found before = own(primary, primary.envelope("in_order"));
        assertThat(before.planned().called()).isTrue();
        services.jdbc().sql("delete from status_session").update();
        as("carl", () -> primary.office().the(StatusService.class).rebuild(new ElectionId(Primary.ID)));
        assertThat(own(primary, primary.envelope("in_order"))).isEqualTo(before);
        assertThat(services.jdbc()
                        .sql("select count(*) from status_session")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }
}
