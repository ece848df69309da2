package org.proviso.review.news;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.proviso.access.ActDoor;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.assess.AssessmentRow;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.assess.AssessmentStore;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Looks at cases again when something from outside changed: a newer file, a paper, an order, a notice sent, a deadline
 * passed. A proposal that rests on what has changed goes back to the reviewers; a decision stays until people reopen it.
 */
@Service
@BetweenRooms
public class CaseRecheck {

    private final CaseReturnStore returns;
    private final CaseStore cases;
    private final ProposalStore proposals;
    private final EndProposalStore ends;
    private final AssessmentStore assessments;
    private final AssessmentService service;
    private final CaseActSteps steps;
    private final ActDoor door;
    private final ApplicationEventPublisher rooms;

    CaseRecheck(
            CaseStore cases,
            ProposalStore proposals,
            EndProposalStore ends,
            AssessmentStore assessments,
            AssessmentService service,
            CaseActSteps steps,
            ActDoor door,
            ApplicationEventPublisher rooms,
            CaseReturnStore returns) {
        this.returns = returns;
        this.cases = cases;
        this.proposals = proposals;
        this.ends = ends;
        this.assessments = assessments;
        this.service = service;
        this.steps = steps;
        this.door = door;
        this.rooms = rooms;
    }

    /**
     * Assesses cases again and says of which the rules now say something else. Joins the transaction of the change, and
     * must come before that records itself in the ledger, because cases are locked first.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<CaseDifference> lookAgain(
            Collection<EnvelopeKey> keys, Actor by, Map<EnvelopeKey, List<String>> because) {
        SortedSet<EnvelopeKey> inOrder = new TreeSet<>(keys);
        List<EnvelopeCase> locked = inOrder.stream().map(steps::lock).toList();
        List<CaseDifference> differences = new ArrayList<>();
        SortedMap<EnvelopeKey, AssessmentRow> before = new TreeMap<>();
        if (!inOrder.isEmpty()) {
            assessments.latest(inOrder.first().electionId(), inOrder).forEach(row -> before.put(row.key(), row));
        }
        SortedMap<EnvelopeKey, CaseReport> reports = service.renew(inOrder);
        List<EnvelopeCase> recalled = new ArrayList<>();
        for (EnvelopeCase envelopeCase : locked) {
            AssessmentRow was = before.get(envelopeCase.key());
            CaseReport now =
                    Objects.requireNonNull(reports.get(envelopeCase.key()), "every locked case is assessed anew");
            if (was != null && differs(was, now)) {
                differences.add(
                        difference(envelopeCase, was, now, because.getOrDefault(envelopeCase.key(), List.of())));
                if (envelopeCase.state() == CaseState.PROPOSED || envelopeCase.state() == CaseState.READY) {
                    recalled.add(recall(envelopeCase, because.getOrDefault(envelopeCase.key(), List.of())));
                }
            }
        }
        recalled.forEach(envelopeCase -> door.record(
                by,
                LedgerLine.of(
                        LedgerChain.of(envelopeCase.key().electionId()),
                        "recalled",
                        envelopeCase.key().envelopeNo().value(),
                        Map.of())));
        service.announce(reports);
        differences.forEach(rooms::publishEvent);
        return differences;
    }

    private EnvelopeCase recall(EnvelopeCase envelopeCase, List<String> because) {
        returns.note(envelopeCase.key(), CaseReturn.Kind.RECALLED, String.join(" ", because), null);
        if (!ends.endStanding(envelopeCase.key(), Proposal.State.RETURNED)) {
            proposals
                    .newest(envelopeCase.key())
                    .filter(Proposal::stands)
                    .ifPresent(standing -> proposals.end(standing, Proposal.State.RETURNED));
        }
        return cases.save(envelopeCase.to(CaseGraph.after(envelopeCase.state(), CaseAct.RECALL)));
    }

    private static boolean differs(AssessmentRow was, CaseReport now) {
        return was.recommendation() != now.recommendation()
                || !was.reasons().equals(now.settled().outcome().reasons())
                || was.outlook() != outlook(now);
    }

    private static Recommendation outlook(CaseReport report) {
        return report.outlook().outcome().recommendation();
    }

    private static CaseDifference difference(
            EnvelopeCase envelopeCase, AssessmentRow was, CaseReport now, List<String> because) {
        return new CaseDifference(
                envelopeCase.key(),
                envelopeCase.state(),
                was.recommendation(),
                now.recommendation(),
                was.outlook(),
                outlook(now),
                because);
    }
}
