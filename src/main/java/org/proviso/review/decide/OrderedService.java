package org.proviso.review.decide;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.access.OfficeUser;
import org.proviso.core.CourtOrder;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Words;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.Grounds;
import org.proviso.core.deciding.Refusal;
import org.proviso.core.deciding.Refusal.Why;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseDesk;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseKey;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStep;
import org.proviso.review.CaseStore;
import org.proviso.review.DecidedBy;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Outcome;
import org.proviso.review.Settlement;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.Groups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases that a court's order settles: to count or to reject the envelopes it names. The office enters what it says. */
@Service
public class OrderedService {

    private final CaseDesk desk;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final SettlementChecks checks;
    private final DecisionEntry entries;
    private final Groups groups;
    private final AssessmentService assessments;
    private final AccessService access;

    OrderedService(
            CaseDesk desk,
            CaseStore cases,
            DecisionStore decisions,
            SettlementChecks checks,
            DecisionEntry entries,
            Groups groups,
            AssessmentService assessments,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.decisions = decisions;
        this.checks = checks;
        this.entries = entries;
        this.groups = groups;
        this.assessments = assessments;
        this.access = access;
    }

    /** Settles a case as the order of that number says (from 1, in the order recorded). */
    @Transactional
    public Outcome settle(CaseKey key, int version, int orderNo) {
        OfficeUser user = access.demand(Act.RECORD_ORDERS);
        SortedSet<CaseKey> touched = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, touched);
        List<CourtOrder> orders = desk.election(key.electionId()).orders();
        Optional<CourtOrder> order = orders.size() < orderNo || orderNo < 1
                ? Optional.empty()
                : Optional.of(orders.get(orderNo - 1)).filter(found -> found.settles(key.envelopeNo()));
        if (order.isEmpty()) {
            return Outcome.Refused.because(
                    Refusal.of(Why.NO_SUCH_ORDER, "No order in force says how to settle this envelope."));
        }
        Settlement settlement = settlement(key, version, order.get());
        Optional<Refusal> refusal =
                desk.closed(key).or(() -> step(one)).or(() -> checks.onlyOne(one, settlement, Set.of()));
        if (refusal.isPresent()) {
            return Outcome.Refused.because(refusal.get());
        }
        AssessmentService.Assessed assessed = assessments.assess(key);
        int number = assessments.write(key, assessed);
        DecidedBy court = new DecidedBy(DeciderKind.OFFICIAL, null, null, Set.of(), user.actor());
        decisions.insert(settlement, Set.of(), assessed.ballot(), number, court, "court");
        EnvelopeCase now = cases.save(one.to(CaseState.DECIDED).counted(settlement.as() == DecidedAs.COUNT));
        touched.add(key);
        SortedMap<CaseKey, CaseReport> reports = assessments.renew(touched);
        desk.record(key, user.actor(), "decided", entry(key, orderNo));
        assessments.announce(reports);
        return new Outcome.Accepted(now);
    }

    private Map<String, Object> entry(CaseKey key, int orderNo) {
        Map<String, Object> entry = entries.of(key, decisions.standing(key).orElseThrow());
        entry.put("order", orderNo);
        return entry;
    }

    private static Settlement settlement(CaseKey key, int version, CourtOrder order) {
        boolean counts = order.kind() == CourtOrder.Kind.COUNT;
        String words = order.court() + ", order of " + Words.date(order.date());
        Grounds grounds = new Grounds(
                counts ? List.of() : List.of(Reason.REJECTED_BY_ORDER), words, "The court ordered it: " + words);
        return new Settlement(key, version, counts ? DecidedAs.COUNT : DecidedAs.REJECT, grounds, Set.of());
    }

    private static Optional<Refusal> step(EnvelopeCase one) {
        return CaseGraph.step(one.state(), CaseAct.ORDER) instanceof CaseStep.Refused refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }
}
