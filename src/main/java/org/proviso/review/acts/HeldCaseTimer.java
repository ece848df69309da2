package org.proviso.review.acts;

import java.time.Duration;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Configuration;
import org.springframework.dao.DataAccessException;
import org.springframework.scheduling.annotation.Scheduled;

/** Looks every ten minutes for cases that nobody works on. The office sets after how long; zero: never. */
@Configuration(proxyBeanMethods = false)
class HeldCaseTimer {

    private static final Logger LOG = LoggerFactory.getLogger(HeldCaseTimer.class);

    private final ElectionService elections;
    private final HeldCaseService held;
    private final Duration longest;

    HeldCaseTimer(
            ElectionService elections,
            HeldCaseService held,
            @Value("${proviso.release-case-after-hours:24}") int hours) {
        this.elections = elections;
        this.held = held;
        this.longest = Duration.ofHours(hours);
    }

    @Scheduled(initialDelay = 90_000, fixedDelay = 600_000)
    void look() {
        if (longest.isZero()) {
            return;
        }
        for (ElectionId election : elections.all()) {
            try {
                held.releaseHeldFor(election, longest);
            } catch (DataAccessException e) {
                LOG.warn("The held cases of {} are looked at again in ten minutes: {}", election, e.getMessage());
            }
        }
    }
}
