package org.proviso.notices;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.springframework.stereotype.Component;

/** The office's time on the clock of an election's county. */
@Component
class CountyClock {

    private final ElectionService elections;
    private final Clock clock;

    CountyClock(ElectionService elections, Clock clock) {
        this.elections = elections;
        this.clock = clock;
    }

    LocalDateTime now(ElectionId electionId) {
        return at(electionId, clock.instant());
    }

    LocalDateTime at(ElectionId electionId, Instant moment) {
        return LocalDateTime.ofInstant(moment, elections.zone(electionId)).truncatedTo(ChronoUnit.MILLIS);
    }
}
