package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.ends.EndProposal;
import org.proviso.review.ends.EndProposalStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** What a reviewer proposes to the decider, and the second reader's word on it. */
@Service
@Validated
public class ProposalService {

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final ProposalStore proposals;
    private final EndProposalStore ends;
    private final AssessmentService assessments;

    ProposalService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            ProposalStore proposals,
            EndProposalStore ends,
            AssessmentService assessments) {
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.proposals = proposals;
        this.ends = ends;
        this.assessments = assessments;
    }

    /**
     * Proposes; to count in full goes to the decider, anything less to a second reader first, and so does whatever counts
     * against the rules' answer.
     */
    @Transactional
    public ActResult<EnvelopeCase> propose(@Valid ProposeOutcome command) {
        EnvelopeKey key = command.key();
        LockedCase act =
                door.demand(Permission.PROPOSE).lock(key, command.version()).withYou();
        if (act.isRefused()) {
            return act.refusal();
        }
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        Optional<CountAgainstRules> against =
                CountAgainstRules.of(command.as(), Set.of(), assessed.report().settled());
        AtomicInteger number = new AtomicInteger();
        return act.refuse(() -> steps.againstOrder(key, command.as()))
                .refuseAll(() -> illegal(command, assessed.report().settled(), against))
                .save(seen -> {
                    number.set(assessments.write(key, assessed));
                    proposals.insert(command, number.get(), act.user().userName());
                    return cases.save(seen.to(CaseGraph.after(seen.state(), step(command.as(), against))));
                })
                .assessedAs(assessed.report())
                .record("proposed", () -> payload(command, number.get(), against));
    }

    /** Takes the own proposal back, of an outcome or of an end without one; the case is again with the proposer. */
    @Transactional
    public ActResult<EnvelopeCase> withdraw(EnvelopeKey key, int version) {
        LockedCase act = door.demand(Permission.PROPOSE).lock(key, version);
        Optional<EndProposal> end = ends.standing(key);
        Optional<Proposal> standing = proposals.newest(key).filter(Proposal::stands);
        boolean own = end.map(EndProposal::proposedBy)
                .or(() -> standing.map(Proposal::proposedBy))
                .filter(act.user().userName()::equals)
                .isPresent();
        return act.refuse(() -> Refusal.when(
                        !own, Why.NOT_WITH_YOU, "Only the reviewer who proposed this can withdraw the proposal."))
                .allows(CaseAct.WITHDRAW)
                .save(seen -> {
                    if (end.isPresent()) {
                        ends.endStanding(key, Proposal.State.WITHDRAWN);
                    } else {
                        proposals.end(standing.orElseThrow(), Proposal.State.WITHDRAWN);
                    }
                    return cases.save(seen.to(
                            CaseGraph.after(seen.state(), CaseAct.WITHDRAW),
                            act.user().userName()));
                })
                .record("proposal_withdrawn");
    }

    /** Reads another's proposal: agrees, and it goes to the decider, or sends it back with a note. */
    @Transactional
    public ActResult<EnvelopeCase> secondReview(EnvelopeKey key, int version, boolean agrees, String note) {
        LockedCase act =
                door.demand(Permission.SECOND_REVIEW).lock(key, version).allows(CaseAct.AGREE);
        Optional<Proposal> standing = proposals.newest(key);
        CaseAct step = agrees ? CaseAct.AGREE : CaseAct.RETURN;
        return act.refuse(() -> Refusal.when(
                        ends.standing(key).isPresent(),
                        Why.NOT_PROPOSED,
                        "No outcome is proposed: confirm the end that is proposed, or send it back."))
                .refuse(() -> Refusal.when(
                        !agrees && note.isBlank(), Why.NO_REASON, "Write a note to send the proposal back."))
                .refuse(() -> agrees
                        ? standing.flatMap(proposal -> steps.againstOrder(key, proposal.as()))
                        : Optional.empty())
                .notBy(() -> standing.stream().map(Proposal::proposedBy).toList())
                .save(seen -> {
                    Proposal read = standing.orElseThrow();
                    proposals.review(read, act.user().userName(), agrees, note);
                    proposals.end(read, agrees ? Proposal.State.AGREED : Proposal.State.RETURNED);
                    return cases.save(seen.to(CaseGraph.after(seen.state(), step)));
                })
                .record(
                        agrees ? "second_review_agreed" : "second_review_returned",
                        () -> note.isBlank() ? Map.of() : Map.of("note", steps.hidden(key, note)));
    }

    private static CaseAct step(DecisionOutcome as, Optional<CountAgainstRules> against) {
        if (against.isPresent()) {
            return CaseAct.PROPOSE_AGAINST;
        }
        return as == DecisionOutcome.COUNT ? CaseAct.PROPOSE_COUNT : CaseAct.PROPOSE_LESS;
    }

    private static List<Refusal> illegal(
            ProposeOutcome command, Assessment settled, Optional<CountAgainstRules> against) {
        Recommendation recommended = settled.outcome().recommendation();
        return Stream.of(
                        DecisionChecks.stillOpen(command.as(), settled.answered()),
                        DecisionChecks.grounds(command.as(), command.grounds()),
                        against.flatMap(rules -> DecisionChecks.referenceAgainst(rules, command.grounds())),
                        DecisionChecks.departure(command.as(), recommended, command.grounds())
                                .or(() -> against.flatMap(
                                        rules -> DecisionChecks.reasonAgainst(rules, command.grounds()))))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What the rules said is in it only where the proposal counts against them: it waits for a second reader then. */
    private Map<String, Object> payload(ProposeOutcome command, int assessment, Optional<CountAgainstRules> against) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("as", command.as().code());
        payload.put("assessment", assessment);
        payload.put("reasons", command.reasons().stream().map(Reason::code).toList());
        payload.put("reference", command.legalReference());
        against.ifPresent(rules -> {
            payload.put("against_rules", rules.rulesSay().code());
            payload.put("known_to_have_voted", rules.knownToHaveVoted());
        });
        if (!command.departsBecause().isBlank()) {
            payload.put("departs_because", steps.hidden(command.key(), command.departsBecause()));
        }
        return payload;
    }
}
