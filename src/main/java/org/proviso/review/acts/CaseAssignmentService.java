package org.proviso.review.acts;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
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
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
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
    private final CaseReturnStore returns;

    CaseAssignmentService(CaseDoor door, CaseStore cases, CaseActSteps steps, CaseReturnStore returns) {
        this.returns = returns;
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

    /** Gives a case back, by whoever has it. */
    @Transactional
    public ActResult<EnvelopeCase> giveBack(EnvelopeKey key, int version) {
        LockedCase act = door.demand(Permission.PROPOSE).lock(key, version);
        act.refuse(() -> Refusal.when(
                !act.seen().isWith(act.user().userName()),
                Why.NOT_WITH_YOU,
                "Only the reviewer who has the case can give it back. A supervisor can release it with a reason."));
        return move(act, CaseAct.GIVE_BACK, null, "given_back");
    }

    /** A supervisor releases a case that somebody has who is away, with the reason, so that another can take it. */
    @Transactional
    public ActResult<EnvelopeCase> release(EnvelopeKey key, int version, String because) {
        LockedCase act = door.demand(Permission.RELEASE_CASES).lock(key, version);
        return act.refuse(() -> because.isBlank()
                        ? Optional.of(Refusal.at("because", Why.NO_REASON, "Required. Enter the reason."))
                        : Optional.empty())
                .allows(CaseAct.GIVE_BACK)
                .save(seen -> {
                    returns.note(
                            key, CaseReturn.Kind.RELEASED, because, act.user().userName());
                    return cases.save(seen.to(CaseGraph.after(seen.state(), CaseAct.GIVE_BACK)));
                })
                .record("given_back", () -> Map.of("because", steps.hidden(key, because)));
    }

    private ActResult<EnvelopeCase> move(LockedCase act, CaseAct step, @Nullable UserName with, String recorded) {
        return act.allows(step)
                .save(seen -> cases.save(seen.to(CaseGraph.after(seen.state(), step), with)))
                .record(recorded);
    }
}
