package org.proviso.review.acts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.proviso.access.ActDoor;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.election.ElectionService;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases that somebody took and did nothing about for as long as the office allows: they go back to the queue. */
@Service
@BetweenRooms
public class HeldCaseService {

    private final CaseStore cases;
    private final CaseActSteps steps;
    private final CaseReturnStore returns;
    private final ElectionService elections;
    private final ActDoor door;
    private final Clock clock;

    HeldCaseService(
            CaseStore cases,
            CaseActSteps steps,
            CaseReturnStore returns,
            ElectionService elections,
            ActDoor door,
            Clock clock) {
        this.cases = cases;
        this.steps = steps;
        this.returns = returns;
        this.elections = elections;
        this.door = door;
        this.clock = clock;
    }

    /** Releases the cases of an election that nobody worked on for so long; which. */
    @Transactional
    public List<EnvelopeKey> releaseHeldFor(ElectionId electionId, Duration longest) {
        if (elections.isClosed(electionId)) {
            return List.of();
        }
        Instant before = clock.instant().minus(longest);
        cases.takenBefore(electionId, before).forEach(steps::lock);
        // somebody may have acted before the case was held
        List<EnvelopeKey> released = cases.takenBefore(electionId, before);
        released.forEach(key -> release(key, longest));
        released.forEach(key -> door.record(
                Actor.SYSTEM,
                LedgerLine.of(
                        LedgerChain.of(electionId),
                        "given_back",
                        key.envelopeNo().value(),
                        Map.of())));
        return released;
    }

    private void release(EnvelopeKey key, Duration longest) {
        EnvelopeCase now = steps.lock(key);
        returns.note(key, CaseReturn.Kind.TIMED_OUT, "No act for " + longest.toHours() + " hours.", null);
        cases.save(now.to(CaseGraph.after(now.state(), CaseAct.GIVE_BACK)));
    }
}
