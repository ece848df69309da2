package org.proviso.review.decide;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Settled cases that a newer record contradicts, and what is done about them. */
@Service
public class FollowUpService {

    private final ContradictedDecisions contradicted;
    private final ContradictionStore store;
    private final CaseStore cases;
    private final CaseDoor door;
    private final AccessService access;

    FollowUpService(
            ContradictedDecisions contradicted,
            ContradictionStore store,
            CaseStore cases,
            CaseDoor door,
            AccessService access) {
        this.contradicted = contradicted;
        this.store = store;
        this.cases = cases;
        this.door = door;
        this.access = access;
    }

    /** Those nobody has followed up yet, by envelope number. */
    @Transactional(readOnly = true)
    public List<ContradictedDecision> open(ElectionId electionId) {
        access.demand(Permission.FOLLOW_UP);
        return contradicted.open(electionId);
    }

    /** What was done about contradicted decisions, by envelope number and in their order. */
    @Transactional(readOnly = true)
    public List<FollowUp> done(ElectionId electionId) {
        access.demand(Permission.FOLLOW_UP);
        return contradicted.followUps(electionId);
    }

    /**
     * Writes down what was done about a ballot that is counted already, or about an envelope that went to another county:
     * to whom it was referred, who was told; also about what a court ordered, which no vote here can change. What is still
     * closed and was decided here is the decider's: a vote lets the decision stand or reopens it.
     */
    @Transactional
    public ActResult<EnvelopeCase> record(EnvelopeKey key, int version, String whatWasDone) {
        LockedCase locked = door.demand(Permission.FOLLOW_UP).lock(key, version, new TreeSet<>());
        Optional<ContradictedDecision> found = contradicted.open(key);
        return locked.refuse(() -> ContradictedDecisions.notContradicted(key, found))
                .refuse(() -> stillToDecide(found.orElseThrow()))
                .refuse(() -> whatWasDone.isBlank()
                        ? Optional.of(Refusal.at(
                                "whatWasDone", Why.NO_REASON, "Required. Enter what was done, and who was told."))
                        : Optional.empty())
                .save(seen -> {
                    store.followUp(
                            found.orElseThrow(),
                            whatWasDone,
                            null,
                            null,
                            locked.user().userName());
                    return cases.save(seen);
                })
                .record("followed_up", () -> contradicted.entry(found.orElseThrow(), whatWasDone, null, null));
    }

    private static Optional<Refusal> stillToDecide(ContradictedDecision found) {
        return Refusal.when(
                found.isTheDeciders(),
                Why.NOT_IN_THIS_STATE,
                found.key().envelopeNo() + " is still closed. The decider lets the decision stand or reopens it.");
    }
}
