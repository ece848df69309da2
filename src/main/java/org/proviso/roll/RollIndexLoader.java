package org.proviso.roll;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Reads the newest election's roll into its index when the office opens, beside the requests and not within one. A verb of
 * the shell has no use for it, and would close the database under it.
 */
@Component
@ConditionalOnWebApplication
class RollIndexLoader {

    private static final Logger LOG = LoggerFactory.getLogger(RollIndexLoader.class);

    private final RollMatches matches;
    private final ElectionService elections;

    RollIndexLoader(RollMatches matches, ElectionService elections) {
        this.matches = matches;
        this.elections = elections;
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        List<ElectionId> ids = elections.all();
        if (!ids.isEmpty()) {
            Thread reader = new Thread(() -> read(ids.get(0)), "roll-reading");
            reader.setDaemon(true);
            reader.start();
        }
    }

    /** A roll that cannot be read now is read again by the first who asks, who then sees why. */
    private void read(ElectionId electionId) {
        try {
            matches.prepare(electionId);
        } catch (RuntimeException e) {
            LOG.warn("The roll of {} could not be read into its index at the start.", electionId, e);
        }
    }
}
