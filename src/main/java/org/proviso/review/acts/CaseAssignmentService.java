package org.proviso.review.acts;

import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
import org.proviso.access.Role;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who has a case. Every act carries the version in which the case was seen; an act on an older one throws
 * {@link org.springframework.dao.OptimisticLockingFailureException} and changes nothing.
 */
@Service
public class CaseAssignmentService {

    private final CaseDoor door;
    private final CaseStore cases;
    private final CaseActSteps steps;

    CaseAssignmentService(CaseDoor door, CaseStore cases, CaseActSteps steps) {
        this.door = door;
        this.cases = cases;
        this.steps = steps;
    }

    /** Takes a case to review it; nobody else works on it until it is given back or proposed. */
    @Transactional
    public ActResult<EnvelopeCase> take(EnvelopeKey key, int version) {
        LockedCase act = door.demand(Permission.PROPOSE).lock(key, version).refuse(() -> steps.reviewGate(key));
        return move(act, CaseAct.TAKE, act.user().userName(), "taken");
    }

    /** Gives a case back, by whoever has it or by a supervisor for one who is away. */
    @Transactional
    public ActResult<EnvelopeCase> giveBack(EnvelopeKey key, int version) {
        LockedCase act = door.demand(Permission.PROPOSE).lock(key, version);
        boolean may =
                act.seen().isWith(act.user().userName()) || act.user().roles().contains(Role.SUPERVISOR);
        act.refuse(() -> Refusal.when(
                !may, Why.NOT_WITH_YOU, "Only the reviewer who has the case, or a supervisor, can give it back."));
        return move(act, CaseAct.GIVE_BACK, null, "given_back");
    }

    private ActResult<EnvelopeCase> move(LockedCase act, CaseAct step, @Nullable UserName with, String recorded) {
        return act.allows(step)
                .save(seen -> cases.save(seen.to(CaseGraph.after(seen.state(), step), with)))
                .record(recorded);
    }
}
