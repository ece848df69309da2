package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseTransition;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.ReadProposal;
import org.proviso.review.ReadyCase;
import org.proviso.review.assess.AssessmentService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** What a reviewer proposes to the decider, and the second reader's word on it. */
@Service
@Validated
public class ProposalService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final ProposalStore proposals;
    private final AssessmentService assessments;
    private final AccessService access;

    ProposalService(
            CaseActSteps desk,
            CaseStore cases,
            ProposalStore proposals,
            AssessmentService assessments,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.proposals = proposals;
        this.assessments = assessments;
        this.access = access;
    }

    /** The newest proposal of a case, whatever became of it. */
    @Transactional(readOnly = true)
    public Optional<Proposal> newest(EnvelopeKey key) {
        return proposals.newest(key);
    }

    /** The newest proposals of several envelopes with who read them again, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, ReadProposal> newest(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return proposals.newest(electionId, envelopeNos);
    }

    /** Every case of an election that waits for the decider, with what is proposed, by envelope number. */
    @Transactional(readOnly = true)
    public List<ReadyCase> ready(ElectionId electionId) {
        return proposals.ready(electionId);
    }

    /** Proposes; to count in full goes to the decider, anything less to a second reader first. */
    @Transactional
    public CaseActResult propose(@Valid ProposeOutcome command) {
        OfficeUser user = access.demand(Permission.PROPOSE);
        EnvelopeKey key = command.key();
        EnvelopeCase one = desk.lock(key, command.version());
        Optional<Refusal> notYet = desk.closed(key).or(() -> desk.notWith(one, user));
        if (notYet.isPresent()) {
            return CaseActResult.Refused.because(notYet.get());
        }
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        List<Refusal> illegal = illegal(command, assessed.report().settled());
        if (!illegal.isEmpty()) {
            return new CaseActResult.Refused(illegal);
        }
        int number = assessments.write(key, assessed);
        proposals.insert(command, number, user.userName());
        CaseAct act = command.as() == DecisionOutcome.COUNT ? CaseAct.PROPOSE_COUNT : CaseAct.PROPOSE_LESS;
        EnvelopeCase now = cases.save(one.to(after(one, act)));
        desk.record(key, user.actor(), "proposed", payload(command, number));
        assessments.announce(new TreeMap<>(Map.of(key, assessed.report())));
        return new CaseActResult.Accepted(now);
    }

    /** Takes the own proposal back; the case is again with the proposer. */
    @Transactional
    public CaseActResult withdraw(EnvelopeKey key, int version) {
        OfficeUser user = access.demand(Permission.PROPOSE);
        EnvelopeCase one = desk.lock(key, version);
        Optional<Proposal> standing = proposals.newest(key).filter(Proposal::stands);
        boolean own = standing.map(Proposal::proposedBy)
                .filter(user.userName()::equals)
                .isPresent();
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> own
                        ? Optional.empty()
                        : Optional.of(Refusal.of(Why.NOT_WITH_YOU, "Only who proposed takes a proposal back.")))
                .or(() -> step(one, CaseAct.WITHDRAW));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        proposals.end(standing.orElseThrow(), Proposal.State.WITHDRAWN);
        EnvelopeCase now = cases.save(one.to(after(one, CaseAct.WITHDRAW), user.userName()));
        desk.record(key, user.actor(), "proposal_withdrawn", Map.of());
        return new CaseActResult.Accepted(now);
    }

    /** Reads another's proposal: agrees, and it goes to the decider, or sends it back with a note. */
    @Transactional
    public CaseActResult secondReview(EnvelopeKey key, int version, boolean agrees, String note) {
        OfficeUser user = access.demand(Permission.SECOND_REVIEW);
        EnvelopeCase one = desk.lock(key, version);
        CaseAct act = agrees ? CaseAct.AGREE : CaseAct.RETURN;
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> one.state() == CaseState.PROPOSED ? Optional.empty() : step(one, CaseAct.AGREE))
                .or(() -> agrees || !note.isBlank()
                        ? Optional.empty()
                        : Optional.of(Refusal.of(Why.NO_REASON, "Sending a proposal back needs a note.")));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        Proposal standing = proposals.newest(key).orElseThrow();
        access.demandSomebodyElse(Permission.SECOND_REVIEW, List.of(standing.proposedBy()));
        proposals.review(standing, user.userName(), agrees, note);
        proposals.end(standing, agrees ? Proposal.State.AGREED : Proposal.State.RETURNED);
        EnvelopeCase now = cases.save(one.to(after(one, act)));
        desk.record(
                key,
                user.actor(),
                agrees ? "second_review_agreed" : "second_review_returned",
                note.isBlank() ? Map.of() : Map.of("note", desk.hidden(key, note)));
        return new CaseActResult.Accepted(now);
    }

    private static List<Refusal> illegal(ProposeOutcome command, Assessment settled) {
        Recommendation recommended = settled.outcome().recommendation();
        return Stream.of(
                        DecisionChecks.stillOpen(command.as(), settled.answered()),
                        DecisionChecks.grounds(command.as(), command.grounds()),
                        DecisionChecks.departure(command.as(), recommended, command.grounds()))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Refusal> step(EnvelopeCase one, CaseAct act) {
        return CaseGraph.step(one.state(), act) instanceof CaseTransition.Refused refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }

    private static CaseState after(EnvelopeCase one, CaseAct act) {
        return ((CaseTransition.To) CaseGraph.step(one.state(), act)).state();
    }

    private Map<String, Object> payload(ProposeOutcome command, int assessment) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("as", command.as().code());
        payload.put("assessment", assessment);
        payload.put("reasons", command.reasons().stream().map(Reason::code).toList());
        payload.put("reference", command.legalReference());
        if (!command.departsBecause().isBlank()) {
            payload.put("departs_because", desk.hidden(command.key(), command.departsBecause()));
        }
        return payload;
    }
}
