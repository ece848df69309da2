package org.proviso.review.news;

import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.election.clock.ClockMoved;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DataAccessException;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;

/**
 * Looks every minute whether a deadline of an election has passed. Of several nodes the first one records it; the
 * others find it recorded.
 */
@Configuration(proxyBeanMethods = false)
@EnableScheduling
class DeadlineTimer {

    private static final Logger LOG = LoggerFactory.getLogger(DeadlineTimer.class);

    private final ElectionService elections;
    private final DeadlineService deadlines;

    DeadlineTimer(ElectionService elections, DeadlineService deadlines) {
        this.elections = elections;
        this.deadlines = deadlines;
    }

    /** At once where a demonstration's clock was moved. */
    @EventListener
    void look(ClockMoved moved) {
        look();
    }

    @Scheduled(initialDelay = 30_000, fixedDelay = 60_000)
    void look() {
        for (ElectionId election : elections.all()) {
            try {
                deadlines.recordPassedDeadlines(election);
            } catch (DataAccessException e) {
                LOG.warn("The deadlines of {} are looked at again in a minute: {}", election, e.getMessage());
            }
        }
    }
}
