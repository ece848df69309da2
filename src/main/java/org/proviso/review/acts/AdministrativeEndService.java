package org.proviso.review.acts;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseTransition;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Ends that are no decision on a vote: sent on to the home county, or nothing to decide. Only where the rules say so. */
@Service
public class AdministrativeEndService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final AccessService access;

    AdministrativeEndService(
            CaseActSteps desk,
            CaseStore cases,
            VoterGroups groups,
            AssessmentService assessments,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.groups = groups;
        this.assessments = assessments;
        this.access = access;
    }

    /** The envelope goes to the voter's home county, where the law says that it does. */
    @Transactional
    public CaseActResult sendOn(EnvelopeKey key, int version) {
        return end(key, version, CaseAct.SEND_ON, Recommendation.SENT_ON, "sent_on");
    }

    /** There is no vote to decide: withdrawn, spoiled, or a regular ballot put in by mistake. */
    @Transactional
    public CaseActResult end(EnvelopeKey key, int version) {
        return end(key, version, CaseAct.END, Recommendation.ADMINISTRATIVE_END, "ended");
    }

    private CaseActResult end(EnvelopeKey key, int version, CaseAct act, Recommendation needed, String recorded) {
        OfficeUser user = access.demand(Permission.PROPOSE);
        SortedSet<EnvelopeKey> touched = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, touched);
        CaseTransition step = CaseGraph.step(one.state(), act);
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        Recommendation says = assessed.report().recommendation();
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> step instanceof CaseTransition.Refused refused
                        ? Optional.of(refused.refusal())
                        : Optional.empty())
                .or(() -> one.state() == CaseState.IN_REVIEW ? desk.notWith(one, user) : Optional.empty())
                .or(() -> says == needed ? Optional.empty() : Optional.of(otherwise(says, needed)));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        int number = assessments.write(key, assessed);
        EnvelopeCase now = cases.save(one.to(((CaseTransition.To) step).state()));
        touched.add(key);
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(touched);
        desk.record(
                key,
                user.actor(),
                recorded,
                Map.of(
                        "assessment",
                        number,
                        "reasons",
                        assessed.report().settled().outcome().reasons().stream()
                                .map(reason -> reason.code())
                                .toList()));
        assessments.announce(reports);
        return new CaseActResult.Accepted(now);
    }

    private static Refusal otherwise(Recommendation says, Recommendation needed) {
        return Refusal.of(
                Why.NOT_AS_RECOMMENDED,
                "The rules say " + says.words() + ", not " + needed.words() + ": the case goes to the decider.");
    }
}
