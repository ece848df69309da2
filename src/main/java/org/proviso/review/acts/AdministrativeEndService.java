package org.proviso.review.acts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.ends.EndProposal;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Ends that are no decision on a vote: sent on to the home county, or nothing to decide. Only where the rules say so; one
 * person proposes it, and another confirms it or returns it. The proposer takes it back like any other proposal.
 */
@Service
public class AdministrativeEndService {

    private static final int LONGEST = 200;

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final EndProposalStore proposals;
    private final VoterGroups groups;
    private final AssessmentService assessments;

    AdministrativeEndService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            EndProposalStore proposals,
            VoterGroups groups,
            AssessmentService assessments) {
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.proposals = proposals;
        this.groups = groups;
        this.assessments = assessments;
    }

    /** Proposes that the envelope goes to the voter's home county, where the law says that it does. */
    @Transactional
    public ActResult<EnvelopeCase> proposeToSendOn(EnvelopeKey key, int version, String toCounty) {
        return propose(key, version, Recommendation.SENT_ON, toCounty.strip());
    }

    /** Proposes that there is no vote to decide: withdrawn, spoiled, or a regular ballot put in by mistake. */
    @Transactional
    public ActResult<EnvelopeCase> proposeToEnd(EnvelopeKey key, int version) {
        return propose(key, version, Recommendation.ADMINISTRATIVE_END, "");
    }

    private ActResult<EnvelopeCase> propose(EnvelopeKey key, int version, Recommendation as, String toCounty) {
        LockedCase locked = door.demand(Permission.PROPOSE)
                .lock(key, version)
                .allows(CaseAct.PROPOSE_END)
                .withYou()
                .refuse(() -> steps.endForbidden(key, as == Recommendation.SENT_ON))
                .refuse(() -> countyWrong(as, toCounty));
        if (locked.isRefused()) {
            return locked.refusal();
        }
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        Assessment settled = assessed.report().settled();
        AtomicInteger number = new AtomicInteger();
        return locked.refuse(() -> otherwise(assessed, as))
                .save(seen -> {
                    number.set(assessments.write(key, assessed));
                    proposals.insert(
                            key,
                            new EndProposalStore.New(
                                    as,
                                    toCounty,
                                    settled.outcome().reasons(),
                                    String.join("; ", settled.consequences()),
                                    number.get()),
                            locked.user().userName());
                    return cases.save(seen.to(CaseGraph.after(seen.state(), CaseAct.PROPOSE_END)));
                })
                .assessedAs(assessed.report())
                .record("end_proposed", () -> proposed(key, as, toCounty, number.get(), settled));
    }

    /** A different person confirms what is proposed: the envelope is sent on, or its case is closed without a decision. */
    @Transactional
    public ActResult<EnvelopeCase> confirm(EnvelopeKey key, int version) {
        LockedCase locked = door.demand(Permission.SECOND_REVIEW).lock(key, version, groups.others(key));
        Optional<EndProposal> standing = proposals.standing(key);
        boolean sendsOn = standing.filter(EndProposal::sendsOn).isPresent();
        CaseAct act = sendsOn ? CaseAct.SEND_ON : CaseAct.END;
        locked.allows(act)
                .refuse(() -> notProposed(standing))
                .notBy(() -> standing.stream().map(EndProposal::proposedBy).toList())
                .refuse(() -> steps.endForbidden(key, sendsOn));
        if (locked.isRefused()) {
            return locked.refusal();
        }
        EndProposal proposal = standing.orElseThrow();
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        AtomicInteger number = new AtomicInteger();
        return locked.refuse(() -> otherwise(assessed, proposal.as()))
                .save(seen -> {
                    number.set(assessments.write(key, assessed));
                    proposals.read(
                            proposal, Proposal.State.AGREED, locked.user().userName(), "");
                    return cases.save(seen.to(CaseGraph.after(seen.state(), act)));
                })
                .assessAnew()
                .record(sendsOn ? "sent_on" : "ended", () -> confirmed(proposal, number.get(), assessed));
    }

    /** A different person returns what is proposed to the reviewers, with the reason. */
    @Transactional
    public ActResult<EnvelopeCase> sendBack(EnvelopeKey key, int version, String note) {
        LockedCase locked =
                door.demand(Permission.SECOND_REVIEW).lock(key, version).allows(CaseAct.RETURN);
        Optional<EndProposal> standing = proposals.standing(key);
        return locked.refuse(() -> notProposed(standing))
                .refuse(() -> Refusal.when(note.isBlank(), Why.NO_REASON, "Write a note to send the proposal back."))
                .notBy(() -> standing.stream().map(EndProposal::proposedBy).toList())
                .save(seen -> {
                    proposals.read(
                            standing.orElseThrow(),
                            Proposal.State.RETURNED,
                            locked.user().userName(),
                            note);
                    return cases.save(seen.to(CaseGraph.after(seen.state(), CaseAct.RETURN)));
                })
                .record("end_returned", () -> Map.of("note", steps.hidden(key, note)));
    }

    private static Optional<Refusal> countyWrong(Recommendation as, String toCounty) {
        if (as != Recommendation.SENT_ON) {
            return Optional.empty();
        }
        if (toCounty.length() > LONGEST) {
            return Optional.of(
                    Refusal.at("toCounty", Why.MISTYPED, "Enter the county in at most " + LONGEST + " characters."));
        }
        return toCounty.isEmpty()
                ? Optional.of(Refusal.at("toCounty", Why.NO_REASON, "Required. Enter the county it goes to."))
                : Optional.empty();
    }

    private static Optional<Refusal> notProposed(Optional<EndProposal> standing) {
        return Refusal.when(
                standing.isEmpty(),
                Why.NOT_PROPOSED,
                "Nobody proposed to send this envelope on, or to close its case without a decision.");
    }

    private static Optional<Refusal> otherwise(AssessmentService.AssessedCase assessed, Recommendation needed) {
        Recommendation says = assessed.report().recommendation();
        return Refusal.when(
                says != needed,
                Why.NOT_AS_RECOMMENDED,
                "The rules say " + says.words() + ", not " + needed.words() + ": the case goes to the decider.");
    }

    private Map<String, Object> proposed(
            EnvelopeKey key, Recommendation as, String toCounty, int assessment, Assessment settled) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("as", as.code());
        payload.put("assessment", assessment);
        payload.put("reasons", codes(settled.outcome().reasons()));
        payload.put("reference", String.join("; ", settled.consequences()));
        if (!toCounty.isEmpty()) {
            payload.put("county", steps.hidden(key, toCounty));
        }
        return payload;
    }

    /** An entry without the number of its proposal is from before a second person confirmed it. */
    private static Map<String, Object> confirmed(
            EndProposal proposal, int assessment, AssessmentService.AssessedCase assessed) {
        return Map.of(
                "assessment",
                assessment,
                "reasons",
                codes(assessed.report().settled().outcome().reasons()),
                "proposal",
                proposal.number());
    }

    private static List<String> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }
}
