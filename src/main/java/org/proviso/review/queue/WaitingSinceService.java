package org.proviso.review.queue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.election.ElectionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Since when the work on cases waits, for the start page. It names no voter. */
@Service
public class WaitingSinceService {

    /** After a day somebody asks why (common practice). */
    private static final Duration TOO_LONG = Duration.ofDays(1);

    private final WaitingSinceStore store;
    private final ElectionService elections;
    private final AccessService access;
    private final Clock clock;

    WaitingSinceService(WaitingSinceStore store, ElectionService elections, AccessService access, Clock clock) {
        this.store = store;
        this.elections = elections;
        this.access = access;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public WaitingSince of(ElectionId electionId) {
        UserName you = access.demand(Permission.READ_FIGURES).userName();
        ZoneId zone = elections.zone(electionId);
        Instant now = clock.instant();
        LocalDateTime here = LocalDateTime.ofInstant(now, zone);
        return new WaitingSince(
                store.oldest(electionId),
                store.with(electionId, you),
                store.proposedByOthers(electionId, you),
                store.notKeyed(electionId, now.minus(TOO_LONG)),
                store.held(electionId, you, now.minus(TOO_LONG)),
                store.lapsing(electionId, here, here.toLocalDate().plusDays(1).atStartOfDay()));
    }
}
