package org.proviso.election.clock;

import java.time.Duration;
import java.time.Instant;

/** A demonstration's clock as kept: how far it is ahead of the machine's, and a moment it told already. */
record KeptClock(Duration ahead, Instant notBefore) {

    /** Told now it reads at least what it read before, even where the machine's clock was set back in between. */
    Duration aheadOf(Instant machine) {
        Duration least = Duration.between(machine, notBefore);
        return ahead.compareTo(least) < 0 ? least : ahead;
    }
}
