package org.proviso.review.decide;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseTransition;
import org.proviso.review.DecidedBy;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Settlement;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases that a court's order settles: to count or to reject the envelopes it names. The office enters what it says. */
@Service
public class CourtOrderSettlementService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final DecisionLedgerEntry entries;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final AccessService access;

    CourtOrderSettlementService(
            CaseActSteps desk,
            CaseStore cases,
            DecisionStore decisions,
            DecisionLedgerEntry entries,
            VoterGroups groups,
            AssessmentService assessments,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.decisions = decisions;
        this.entries = entries;
        this.groups = groups;
        this.assessments = assessments;
        this.access = access;
    }

    /** Settles a case as the order of that number says (from 1, in the order recorded). */
    @Transactional
    public CaseActResult settle(EnvelopeKey key, int version, int orderNo) {
        OfficeUser user = access.demand(Permission.RECORD_ORDERS);
        SortedSet<EnvelopeKey> touched = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, touched);
        List<CourtOrder> orders = desk.election(key.electionId()).orders();
        Optional<CourtOrder> order = orders.size() < orderNo || orderNo < 1
                ? Optional.empty()
                : Optional.of(orders.get(orderNo - 1)).filter(found -> found.settles(key.envelopeNo()));
        if (order.isEmpty()) {
            return CaseActResult.Refused.because(
                    Refusal.of(Why.NO_SUCH_ORDER, "No order in force says how to settle this envelope."));
        }
        Settlement settlement = settlement(key, version, order.get());
        Optional<Refusal> refusal = desk.closed(key).or(() -> step(one)).or(() -> onlyOne(one, settlement));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        AssessmentService.AssessedCase assessed = assessments.assess(key);
        int number = assessments.write(key, assessed);
        DecidedBy court = new DecidedBy(DeciderKind.OFFICIAL, null, null, Set.of(), user.actor());
        decisions.insert(new DecisionStore.New(settlement, Set.of(), assessed.ballot(), number), court, "court");
        EnvelopeCase now = cases.save(one.to(CaseState.DECIDED).counted(settlement.as() == DecisionOutcome.COUNT));
        touched.add(key);
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(touched);
        desk.record(key, user.actor(), "decided", entry(key, orderNo));
        assessments.announce(reports);
        return new CaseActResult.Accepted(now);
    }

    private Optional<Refusal> onlyOne(EnvelopeCase one, Settlement settlement) {
        List<EnvelopeCase> others = groups.of(List.of(one.key())).otherCases(one.key());
        return SettlementChecks.onlyOne(one, settlement, others, Set.of());
    }

    private Map<String, Object> entry(EnvelopeKey key, int orderNo) {
        Map<String, Object> entry = Objects.requireNonNull(
                entries.of(key.electionId(), List.of(key.envelopeNo())).get(key.envelopeNo()),
                "a decision that is written down has its entry");
        entry.put("order", orderNo);
        return entry;
    }

    private static Settlement settlement(EnvelopeKey key, int version, CourtOrder order) {
        boolean counts = order.kind() == CourtOrder.Kind.COUNT;
        String words = order.court() + ", order of " + DateWords.date(order.date());
        Grounds grounds = new Grounds(
                counts ? List.of() : List.of(Reason.REJECTED_BY_ORDER), words, "The court ordered it: " + words);
        return new Settlement(key, version, counts ? DecisionOutcome.COUNT : DecisionOutcome.REJECT, grounds, Set.of());
    }

    private static Optional<Refusal> step(EnvelopeCase one) {
        return CaseGraph.step(one.state(), CaseAct.ORDER) instanceof CaseTransition.Refused refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }
}
