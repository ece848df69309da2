package org.proviso.review.decide;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;
import org.proviso.core.rules.Reason;
import org.proviso.election.CourtOrderStore;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.DecidedBy;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.Settlement;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.ends.CountyReceiptStore;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases that a court's order settles: to count or to reject the envelopes it names. The office enters what it says. */
@Service
public class CourtOrderSettlementService {

    private final CaseDoor door;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final DecisionLedgerEntry entries;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final CourtOrderStore orders;
    private final EnvelopesInBatches batches;
    private final EndProposalStore ends;
    private final CountyReceiptStore receipts;

    CourtOrderSettlementService(
            CaseDoor door,
            CaseStore cases,
            DecisionStore decisions,
            DecisionLedgerEntry entries,
            VoterGroups groups,
            AssessmentService assessments,
            CourtOrderStore orders,
            EnvelopesInBatches batches,
            EndProposalStore ends,
            CountyReceiptStore receipts) {
        this.ends = ends;
        this.receipts = receipts;
        this.orders = orders;
        this.batches = batches;
        this.door = door;
        this.cases = cases;
        this.decisions = decisions;
        this.entries = entries;
        this.groups = groups;
        this.assessments = assessments;
    }

    /**
     * Settles a case as the order of that number says (from 1, in the order recorded); a decision that stands is set aside by
     * it, and the envelope leaves its sealed batch. Whoever recorded the order does not apply it.
     */
    @Transactional
    public ActResult<EnvelopeCase> settle(EnvelopeKey key, int version, int orderNo) {
        CaseDoor.Permitted permitted = door.demand(Permission.RECORD_ORDERS);
        LockedCase act = permitted.lock(key, version, groups.others(key));
        Optional<RecordedCourtOrder> order = order(key, orderNo);
        Optional<Settlement> ordered = order.map(found -> settlement(key, version, found.order()));
        return act.refuse(() -> Refusal.when(
                        ordered.isEmpty(), Why.NO_SUCH_ORDER, "No order in force says how to settle this envelope."))
                .allows(CaseAct.ORDER)
                .refuse(() -> settledSo(act.seen(), ordered.orElseThrow()))
                .refuse(() -> batches.beingOpened(key))
                .refuse(() -> onlyOne(act.seen(), ordered.orElseThrow()))
                .notBy(() -> order.orElseThrow().recordedBy())
                .save(seen -> settled(seen, ordered.orElseThrow(), act.user()))
                .assessAnew()
                .record("decided", () -> entry(key, orderNo));
    }

    private Optional<RecordedCourtOrder> order(EnvelopeKey key, int orderNo) {
        return orders.all(key.electionId().value()).stream()
                .filter(found -> found.orderNo() == orderNo && found.order().settles(key.envelopeNo()))
                .findFirst();
    }

    /** The order was applied already. */
    private Optional<Refusal> settledSo(EnvelopeCase seen, Settlement settlement) {
        boolean same = seen.state() == CaseState.DECIDED
                && decisions
                        .standing(seen.key())
                        .filter(found -> found.decider().equals("court") && found.as() == settlement.as())
                        .isPresent();
        return Refusal.when(same, Why.NOTHING_NEW, "This envelope is settled as the court ordered already.");
    }

    private EnvelopeCase settled(EnvelopeCase seen, Settlement settlement, OfficeUser user) {
        if (seen.state() == CaseState.DECIDED) {
            String because = settlement.grounds().departsBecause();
            decisions.setAside(seen.key(), because);
            batches.reopened(seen.key(), user, because);
        }
        ends.endStanding(seen.key(), Proposal.State.RETURNED);
        receipts.setAside(seen.key());
        AssessmentService.AssessedCase assessed = assessments.assess(seen.key());
        int number = assessments.write(seen.key(), assessed);
        DecidedBy court = new DecidedBy(DeciderKind.OFFICIAL, null, null, Set.of(), user.actor());
        decisions.insert(new DecisionStore.New(settlement, Set.of(), assessed.ballot(), number), court, "court");
        return cases.save(seen.to(CaseState.DECIDED).counted(settlement.as() == DecisionOutcome.COUNT));
    }

    private Optional<Refusal> onlyOne(EnvelopeCase envelopeCase, Settlement settlement) {
        List<EnvelopeCase> others = groups.of(List.of(envelopeCase.key())).otherCases(envelopeCase.key());
        return SettlementChecks.onlyOne(envelopeCase, settlement, others, Set.of());
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
}
