package org.proviso.review.decide;

import java.util.Optional;
import java.util.SortedSet;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.intake.correction.CorrectionGate;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** An envelope is corrected while its case is not settled: what a decision rests on is not changed under it. */
@Service
@BetweenRooms
public class CorrectableCases implements CorrectionGate {

    private final CaseStore cases;
    private final CaseActSteps steps;
    private final VoterGroups groups;
    private final EnvelopesInBatches batches;

    CorrectableCases(CaseStore cases, CaseActSteps steps, VoterGroups groups, EnvelopesInBatches batches) {
        this.cases = cases;
        this.steps = steps;
        this.groups = groups;
        this.batches = batches;
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(EnvelopeKey key) {
        SortedSet<EnvelopeKey> touched = groups.others(key);
        touched.add(key);
        touched.forEach(steps::lock);
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public Optional<Refusal> refusal(EnvelopeKey key) {
        CaseState state = cases.find(key).orElseThrow().state();
        if (state == CaseState.RELEASED) {
            return Optional.of(Refusal.of(
                    Why.NOT_IN_THIS_STATE,
                    "Envelope " + key.envelopeNo() + " was opened. What it says can no longer be corrected."));
        }
        if (!state.isOver()) {
            return Optional.empty();
        }
        return batches.beingOpened(key)
                .or(() -> Optional.of(Refusal.of(
                        Why.NOT_IN_THIS_STATE,
                        "The case of " + key.envelopeNo() + " is " + state.spoken()
                                + ". Ask the decider to reopen it first. A reopened case leaves its sealed batch.")));
    }
}
