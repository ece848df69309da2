package org.proviso.election.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.transaction.support.TransactionTemplate;

/** A demonstration's clock begins where its work begins, goes on over restarts, and is moved forward only. */
class OfficeClockTest {

    /** The machine's clock tells a day long after the sample's. */
    private static final Instant MACHINE = Instant.parse("2027-03-01T12:00:00Z");

    private static final Instant MORNING = Instant.parse("2026-11-04T14:00:00Z");

    private final List<Object> heard = new ArrayList<>();

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    /** The server as it is after a start: its clock, how it begins and how it is moved. */
    private record StartedClock(Clock clock, DemonstrationClock beginning, OfficeClockService moving) {

        void begin(Instant now) {
            beginning.begin(now);
        }

        ActResult<Instant> moveTo(LocalDateTime county) {
            return moving.moveTo(county);
        }

        Instant now() {
            return clock.instant();
        }
    }

    /** Started when the machine tells this moment. */
    private StartedClock started(TestOffice office, Instant machine, boolean demo) {
        OfficeClock clock = new OfficeClock(Clock.fixed(machine, ZoneOffset.UTC), demo);
        OfficeClockStore kept = office.the(OfficeClockStore.class);
        if (demo) {
            kept.find().ifPresent(clock::follow);
        }
        DemonstrationClock beginning = new DemonstrationClock(
                clock, kept, office.the(ElectionService.class), office.the(TransactionTemplate.class));
        OfficeClockService moving = new OfficeClockService(
                clock,
                kept,
                office.the(ElectionService.class),
                office.the(AccessService.class),
                office.the(ActDoor.class),
                office.the(TransactionTemplate.class),
                heard::add);
        return new StartedClock(clock, beginning, moving);
    }

    private static void signInWithAnElection(TestOffice office) {
        Staff.hire(office, "carl", Role.SUPERVISOR);
        Staff.signIn("carl");
        accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", "tamarack-primary")));
    }

    @OnBothDatabases
    void it_begins_once_and_runs_on_while_the_server_is_stopped(TestOffice office) {
        started(office, MACHINE, true).begin(MORNING);
        StartedClock later = started(office, MACHINE.plusSeconds(7_200), true);
        later.begin(MORNING);
        assertThat(later.now()).isEqualTo(MORNING.plusSeconds(7_200));
    }

    @OnBothDatabases
    void a_machine_set_back_does_not_take_it_back(TestOffice office) {
        started(office, MACHINE, true).begin(MORNING);
        assertThat(started(office, MACHINE.minus(Duration.ofDays(9)), true).now())
                .isEqualTo(MORNING);
    }

    @OnBothDatabases
    void a_supervisor_moves_it_forward_and_the_ledger_and_the_rooms_hear_of_it(TestOffice office) {
        StartedClock clock = started(office, MACHINE, true);
        clock.begin(MORNING);
        signInWithAnElection(office);
        Instant moved = Instant.parse("2026-11-13T22:05:00Z");
        assertThat(accepted(clock.moveTo(LocalDateTime.of(2026, 11, 13, 17, 5))))
                .isEqualTo(moved);
        assertThat(clock.now()).isEqualTo(moved);
        assertThat(started(office, MACHINE.plusSeconds(60), true).now()).isEqualTo(moved.plusSeconds(60));
        LedgerEntry last =
                office.the(LedgerService.class).read(LedgerChain.OFFICE, 0, 10).get(0);
        assertThat(last.act()).isEqualTo("clock_moved");
        assertThat(last.payload()).containsEntry("from", MORNING.toString()).containsEntry("to", moved.toString());
        assertThat(heard).containsExactly(new ClockMoved(moved));
    }

    @OnBothDatabases
    void back_and_far_ahead_are_refused_and_nothing_moves(TestOffice office) {
        StartedClock clock = started(office, MACHINE, true);
        clock.begin(MORNING);
        signInWithAnElection(office);
        assertThat(refused(clock.moveTo(LocalDateTime.of(2026, 11, 4, 8, 59))))
                .returns(Why.MOMENT_NOT_POSSIBLE, Refusal::why)
                .extracting(Refusal::words)
                .asString()
                .contains("forward only");
        assertThat(refused(clock.moveTo(LocalDateTime.of(2027, 11, 4, 9, 0))))
                .returns(Why.MOMENT_NOT_POSSIBLE, Refusal::why)
                .extracting(Refusal::words)
                .asString()
                .contains("60 days");
        assertThat(clock.now()).isEqualTo(MORNING);
        assertThat(heard).isEmpty();
        assertThat(office.the(LedgerService.class).head(LedgerChain.OFFICE).sequence())
                .isZero();
    }

    @OnBothDatabases
    void only_a_supervisor_moves_it_and_only_in_a_demonstration(TestOffice office) {
        StartedClock real = started(office, MACHINE, false);
        real.begin(MORNING);
        assertThat(real.now()).isEqualTo(MACHINE);
        assertThat(office.the(OfficeClockStore.class).find()).isEmpty();
        signInWithAnElection(office);
        assertThat(refused(real.moveTo(LocalDateTime.of(2027, 3, 2, 9, 0))).why())
                .isEqualTo(Why.NOT_A_DEMONSTRATION);
        assertThat(real.moving().canBeMoved()).isFalse();
        Staff.hire(office, "ada", Role.REVIEWER);
        Staff.signIn("ada");
        assertThatThrownBy(() -> started(office, MACHINE, true).moveTo(LocalDateTime.of(2027, 3, 2, 9, 0)))
                .isInstanceOf(NotPermittedException.class);
    }

    @OnBothDatabases
    void without_an_election_there_is_no_day_to_move_to(TestOffice office) {
        StartedClock clock = started(office, MACHINE, true);
        clock.begin(MORNING);
        Staff.hire(office, "carl", Role.SUPERVISOR);
        Staff.signIn("carl");
        assertThat(refused(clock.moveTo(LocalDateTime.of(2026, 11, 5, 9, 0))).why())
                .isEqualTo(Why.NO_ELECTION);
        assertThat(clock.now()).isEqualTo(MORNING);
    }

    @OnBothDatabases
    void an_office_with_an_election_is_not_begun_anew(TestOffice office) {
        signInWithAnElection(office);
        StartedClock clock = started(office, MACHINE, true);
        clock.begin(MORNING);
        assertThat(clock.now()).isEqualTo(MACHINE);
    }
}
