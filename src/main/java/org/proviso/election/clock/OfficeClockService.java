package org.proviso.election.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The office's clock. It is the machine's; only a demonstration has one of its own, which begins with the sample, runs
 * on in real time, also while the server is stopped, and can be moved forward, never back. Sign-ins that end by
 * themselves go by the machine's clock always.
 */
@Service
public class OfficeClockService {

    /** A slip of the pen in the year could not be taken back. */
    private static final Duration LONGEST = Duration.ofDays(60);

    private final Clock clock;
    private final OfficeClockStore clocks;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher rooms;

    OfficeClockService(
            Clock clock,
            OfficeClockStore clocks,
            ElectionService elections,
            AccessService access,
            ActDoor door,
            TransactionTemplate transaction,
            ApplicationEventPublisher rooms) {
        this.clock = clock;
        this.clocks = clocks;
        this.elections = elections;
        this.access = access;
        this.door = door;
        this.transaction = transaction;
        this.rooms = rooms;
    }

    /** Whether the clock can be moved: only in a demonstration. */
    public boolean canBeMoved() {
        access.demand(Permission.LOAD_FILES);
        return OfficeClock.isOfDemo(clock);
    }

    /**
     * Moves the clock of a demonstration forward to a moment on the county's clock, at most 60 days at a time, and gives
     * the moment it tells. Deadlines that pass by it are recorded before it returns.
     */
    public synchronized ActResult<Instant> moveTo(LocalDateTime county) {
        ActDoor.Permitted supervisor = door.demand(Permission.SET_GATES);
        ActResult<KeptClock> moved =
                Objects.requireNonNull(transaction.execute(status -> move(supervisor, county)), "a move has a result");
        moved.ifAccepted().ifPresent(kept -> {
            own().follow(kept);
            rooms.publishEvent(new ClockMoved(kept.notBefore()));
        });
        return moved.map(KeptClock::notBefore);
    }

    private ActResult<KeptClock> move(ActDoor.Permitted supervisor, LocalDateTime county) {
        Instant before = clock.instant();
        return supervisor
                .lock(this::zone)
                .refuse(zone -> Refusal.when(
                        !OfficeClock.isOfDemo(clock),
                        Why.NOT_A_DEMONSTRATION,
                        "Only the clock of a demonstration can be moved. This is the machine's."))
                .refuse(zone -> Refusal.when(
                        zone.isEmpty(), Why.NO_ELECTION, "There is no election yet whose days the clock could follow."))
                .refuse(zone -> tooFar(before, moment(county, zone)))
                .save(zone -> {
                    KeptClock moved = own().telling(moment(county, zone));
                    clocks.keep(moved);
                    return moved;
                })
                .record(moved -> LedgerLine.of(
                        LedgerChain.OFFICE,
                        "clock_moved",
                        "clock",
                        Map.of(
                                "from",
                                before.toString(),
                                "to",
                                moved.notBefore().toString())));
    }

    private static Optional<Refusal> tooFar(Instant before, Instant to) {
        if (to.isBefore(before)) {
            return Optional.of(notPossible("The clock moves forward only, and that moment has passed."));
        }
        return Duration.between(before, to).compareTo(LONGEST) > 0
                ? Optional.of(notPossible("That is more than 60 days ahead, and it could not be undone."))
                : Optional.empty();
    }

    private static Refusal notPossible(String words) {
        return Refusal.at("county", Why.MOMENT_NOT_POSSIBLE, words);
    }

    private static Instant moment(LocalDateTime county, Optional<ZoneId> zone) {
        return county.atZone(zone.orElseThrow()).toInstant();
    }

    /** The county's, as its newest election has it; empty before there is one. */
    private Optional<ZoneId> zone() {
        List<ElectionId> held = elections.all();
        return held.stream().findFirst().map(elections::zone);
    }

    private OfficeClock own() {
        return (OfficeClock) clock;
    }
}
