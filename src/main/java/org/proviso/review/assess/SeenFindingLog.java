package org.proviso.review.assess;

import java.util.Map;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseActSteps;
import org.proviso.review.facts.FindingSeenStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Records that somebody was shown a first finding on a signature before looking at it. */
@Service
@BetweenRooms
class SeenFindingLog {

    private final ActDoor door;
    private final CaseActSteps steps;
    private final FindingSeenStore seen;

    SeenFindingLog(ActDoor door, CaseActSteps steps, FindingSeenStore seen) {
        this.door = door;
        this.steps = steps;
        this.seen = seen;
    }

    /** In its own transaction: the one that reads the case writes nothing. Noted once, whatever is opened at the same time. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void note(EnvelopeKey key, int answer, OfficeUser reader) {
        steps.lock(key);
        if (seen.isSeen(key, answer, reader.userName())) {
            return;
        }
        seen.insert(key, answer, reader.userName());
        door.record(
                reader.actor(),
                LedgerLine.of(
                        LedgerChain.of(key.electionId()),
                        "signature_finding_seen",
                        key.envelopeNo().value(),
                        Map.of("answer", answer)));
    }
}
