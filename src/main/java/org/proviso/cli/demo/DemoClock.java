package org.proviso.cli.demo;

import org.proviso.election.clock.DemonstrationClock;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** A demonstration begins on the morning after its election day, when the office's work on the envelopes begins. */
@Component
class DemoClock {

    private final DemonstrationClock clock;

    DemoClock(DemonstrationClock clock) {
        this.clock = clock;
    }

    /** Before anything is recorded, so that no entry of the ledger is later than the next. */
    @EventListener(ApplicationReadyEvent.class)
    @Order(-10)
    public void begin() {
        clock.begin(CarriedSample.WORK_BEGINS);
    }
}
