package org.proviso.election.clock;

import java.time.Clock;
import java.time.Instant;
import org.proviso.core.BetweenRooms;
import org.proviso.election.ElectionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Where the clock of a demonstration begins. */
@BetweenRooms
@Service
public class DemonstrationClock {

    private final Clock clock;
    private final OfficeClockStore clocks;
    private final ElectionService elections;
    private final TransactionTemplate transaction;

    DemonstrationClock(
            Clock clock, OfficeClockStore clocks, ElectionService elections, TransactionTemplate transaction) {
        this.clock = clock;
        this.clocks = clocks;
        this.elections = elections;
        this.transaction = transaction;
    }

    /** Sets the clock of a demonstration that has neither a clock nor an election yet; otherwise it goes on as it was. */
    public void begin(Instant now) {
        boolean begun = clocks.find().isPresent() || !elections.all().isEmpty();
        if (clock instanceof OfficeClock own && own.isDemo() && !begun) {
            KeptClock begin = own.telling(now);
            transaction.executeWithoutResult(status -> clocks.keep(begin));
            own.follow(begin);
        }
    }
}
