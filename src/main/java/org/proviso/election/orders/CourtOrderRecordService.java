package org.proviso.election.orders;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.election.CourtOrderStore;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Records the orders of courts about an election, and how each stands later. */
@Service
@Validated
public class CourtOrderRecordService {

    private final CourtOrderStore orders;
    private final ElectionService elections;
    private final List<CourtOrderCheck> checks;
    private final AccessService access;
    private final ActDoor door;

    CourtOrderRecordService(
            CourtOrderStore orders,
            ElectionService elections,
            List<CourtOrderCheck> checks,
            AccessService access,
            ActDoor door) {
        this.orders = orders;
        this.elections = elections;
        this.checks = checks;
        this.access = access;
        this.door = door;
    }

    /** The orders on file in the order of their numbers, for whoever records them. */
    @Transactional(readOnly = true)
    public List<RecordedCourtOrder> all(ElectionId electionId) {
        access.demand(Permission.RECORD_ORDERS);
        return orders.all(electionId.value());
    }

    /**
     * Records an order; refused where it names an envelope that never came. Throws {@link IllegalArgumentException}
     * where there is no such election.
     */
    @Transactional
    public ActResult<RecordedCourtOrder> record(@Valid RecordCourtOrder command) {
        ElectionId id = command.electionId();
        ActDoor.Permitted supervisor = door.demand(Permission.RECORD_ORDERS);
        return supervisor
                .lock(() -> elections.zone(id))
                .refuse(any -> elections.closed(id))
                .refuse(any -> refusal(command))
                .save(any -> {
                    UserName by = supervisor.user().userName();
                    String caseNo = command.caseNo().strip();
                    String judge = command.judge().strip();
                    int number = orders.insert(id, command.order(), caseNo, judge, by);
                    return new RecordedCourtOrder(number, 0, command.order(), List.of(by), caseNo, judge);
                })
                .tell(recorded -> news(id, recorded))
                .record(recorded -> line(id, recorded, "order_recorded"));
    }

    /**
     * Records that an order now stands otherwise: in force, final, set aside. A change that comes with an old version
     * is an {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public ActResult<RecordedCourtOrder> change(
            ElectionId electionId, int orderNo, int version, CourtOrder.Status standing) {
        return door.demand(Permission.RECORD_ORDERS)
                .lockNothing()
                .refuse(any -> elections.closed(electionId))
                .save(user -> {
                    orders.changeStanding(electionId, orderNo, version, standing, user.userName());
                    return orders.find(electionId, orderNo);
                })
                .tell(changed -> news(electionId, changed))
                .record(changed -> line(electionId, changed, "order_standing_changed"));
    }

    private Optional<Refusal> refusal(RecordCourtOrder command) {
        if (command.kind() == CourtOrder.Kind.OPEN) {
            return Optional.of(
                    Refusal.at(
                            "kind",
                            Refusal.Why.NO_SUCH_ORDER,
                            "Opening an envelope settles nothing here. Record what follows: an order to count, reject or hold."));
        }
        return checks.stream()
                .flatMap(check -> check.refusal(command.electionId(), command.envelopeNos()).stream())
                .findFirst();
    }

    private static CourtOrderRecorded news(ElectionId id, RecordedCourtOrder recorded) {
        return new CourtOrderRecorded(id, recorded.orderNo(), recorded.order().envelopeNos());
    }

    private static LedgerLine line(ElectionId id, RecordedCourtOrder recorded, String act) {
        return LedgerLine.of(LedgerChain.of(id), act, "order-" + recorded.orderNo(), payload(recorded.order()));
    }

    /** What an observer may read; court, case number, judge and scope stay in the office. */
    private static Map<String, Object> payload(CourtOrder order) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("kind", order.kind().code());
        payload.put("standing", order.standing().code());
        payload.put("date", text(order.date()));
        payload.put("until", text(order.until()));
        payload.put("envelopes", order.envelopeNos().stream().sorted().toList());
        return payload;
    }

    private static String text(@Nullable Object moment) {
        return moment == null ? "" : moment.toString();
    }
}
