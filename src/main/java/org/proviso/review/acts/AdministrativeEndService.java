package org.proviso.review.acts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Ends that are no decision on a vote: sent on to the home county, or nothing to decide. Only where the rules say so. */
@Service
public class AdministrativeEndService {

    private final CaseDoor door;
    private final CaseStore cases;
    private final VoterGroups groups;
    private final AssessmentService assessments;

    AdministrativeEndService(CaseDoor door, CaseStore cases, VoterGroups groups, AssessmentService assessments) {
        this.door = door;
        this.cases = cases;
        this.groups = groups;
        this.assessments = assessments;
    }

    /** The envelope goes to the voter's home county, where the law says that it does. */
    @Transactional
    public ActResult<EnvelopeCase> sendOn(EnvelopeKey key, int version) {
        return end(key, version, CaseAct.SEND_ON, Recommendation.SENT_ON, "sent_on");
    }

    /** There is no vote to decide: withdrawn, spoiled, or a regular ballot put in by mistake. */
    @Transactional
    public ActResult<EnvelopeCase> end(EnvelopeKey key, int version) {
        return end(key, version, CaseAct.END, Recommendation.ADMINISTRATIVE_END, "ended");
    }

    private ActResult<EnvelopeCase> end(
            EnvelopeKey key, int version, CaseAct act, Recommendation needed, String recorded) {
        CaseDoor.Permitted permitted = door.demand(Permission.PROPOSE);
        LockedCase locked = permitted.lock(key, version, groups.others(key)).allows(act);
        if (locked.seen().state() == CaseState.IN_REVIEW) {
            locked.withYou();
        }
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        Recommendation says = assessed.report().recommendation();
        AtomicInteger number = new AtomicInteger();
        return locked.refuse(() -> says == needed ? Optional.empty() : Optional.of(otherwise(says, needed)))
                .save(seen -> {
                    number.set(assessments.write(key, assessed));
                    return cases.save(seen.to(CaseGraph.after(seen.state(), act)));
                })
                .assessAnew()
                .record(recorded, () -> payload(number.get(), assessed));
    }

    private static Map<String, Object> payload(int number, AssessmentService.AssessedCase assessed) {
        List<String> reasons = assessed.report().settled().outcome().reasons().stream()
                .map(Reason::code)
                .toList();
        return Map.of("assessment", number, "reasons", reasons);
    }

    private static Refusal otherwise(Recommendation says, Recommendation needed) {
        return Refusal.of(
                Why.NOT_AS_RECOMMENDED,
                "The rules say " + says.words() + ", not " + needed.words() + ": the case goes to the decider.");
    }
}
