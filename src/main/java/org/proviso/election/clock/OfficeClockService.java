package org.proviso.election.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
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
    private final LedgerService ledger;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher rooms;

    OfficeClockService(
            Clock clock,
            OfficeClockStore clocks,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            TransactionTemplate transaction,
            ApplicationEventPublisher rooms) {
        this.clock = clock;
        this.clocks = clocks;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.transaction = transaction;
        this.rooms = rooms;
    }

    /** Whether the clock can be moved. */
    public boolean isDemo() {
        return clock instanceof OfficeClock own && own.isDemo();
    }

    public Instant now() {
        return clock.instant();
    }

    /** Sets the clock of a demonstration that has neither a clock nor an election yet; otherwise it goes on as it was. */
    public void begin(Instant now) {
        boolean begun = clocks.find().isPresent() || !elections.all().isEmpty();
        if (isDemo() && !begun) {
            KeptClock begin = own().telling(now);
            transaction.executeWithoutResult(status -> clocks.keep(begin));
            own().follow(begin);
        }
    }

    /**
     * Moves the clock of a demonstration forward to a moment on the county's clock, at most 60 days at a time. Throws
     * {@link ClockRefusedException} outside a demonstration, and for a moment that has been or is too far ahead.
     * Deadlines that pass by it are recorded before it returns.
     */
    public synchronized void moveTo(LocalDateTime county) {
        OfficeUser supervisor = access.demand(Permission.SET_GATES);
        if (!isDemo()) {
            throw new ClockRefusedException("Only the clock of a demonstration can be moved; this is the machine's.");
        }
        Instant before = now();
        Instant to = county.atZone(zone()).toInstant();
        refuseFar(before, to);
        KeptClock moved = own().telling(to);
        transaction.executeWithoutResult(status -> {
            clocks.keep(moved);
            ledger.record(
                    LedgerChain.OFFICE,
                    supervisor.actor(),
                    "clock_moved",
                    "clock",
                    Map.of("from", before.toString(), "to", to.toString()));
        });
        own().follow(moved);
        rooms.publishEvent(new ClockMoved(to));
    }

    private static void refuseFar(Instant before, Instant to) {
        if (to.isBefore(before)) {
            throw new ClockRefusedException("The clock goes forward only; that moment has been.");
        }
        if (Duration.between(before, to).compareTo(LONGEST) > 0) {
            throw new ClockRefusedException("That is more than 60 days ahead, and could not be taken back.");
        }
    }

    /** The county's, as its newest election has it. */
    private ZoneId zone() {
        List<ElectionId> held = elections.all();
        if (held.isEmpty()) {
            throw new ClockRefusedException("There is no election yet whose days the clock could follow.");
        }
        return elections.zone(held.get(0));
    }

    private OfficeClock own() {
        return (OfficeClock) clock;
    }
}
