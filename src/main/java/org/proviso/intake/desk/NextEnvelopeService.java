package org.proviso.intake.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The next envelope for whoever is signed in: one they began before, else the first in order that nobody else saved
 * a draft of in the last ten minutes.
 */
@Service
@Transactional(readOnly = true)
public class NextEnvelopeService {

    private static final Duration IN_HAND = Duration.ofMinutes(10);

    private final NextEnvelopeStore next;
    private final AccessService access;
    private final Clock clock;

    NextEnvelopeService(NextEnvelopeStore next, AccessService access, Clock clock) {
        this.next = next;
        this.access = access;
        this.clock = clock;
    }

    /** The next envelope that is not fully keyed. */
    public Optional<String> first(ElectionId electionId) {
        return next.first(electionId, me(), since());
    }

    /** The next envelope that someone else keyed once. */
    public Optional<String> second(ElectionId electionId) {
        return next.second(electionId, me(), since());
    }

    private UserName me() {
        return access.demand(Permission.KEY_ENVELOPES).userName();
    }

    private OffsetDateTime since() {
        return OffsetDateTime.ofInstant(clock.instant().minus(IN_HAND), ZoneOffset.UTC);
    }
}
