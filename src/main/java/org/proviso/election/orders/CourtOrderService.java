package org.proviso.election.orders;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.election.CourtOrderStore;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Orders of courts about an election. A later room that cannot take one, because it names an envelope that never came,
 * refuses it with the envelope's number, and then nothing was recorded.
 */
@Service
@Validated
public class CourtOrderService {

    private final CourtOrderStore orders;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;

    CourtOrderService(
            CourtOrderStore orders,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            ApplicationEventPublisher rooms) {
        this.orders = orders;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
    }

    /** The orders of an election in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<RecordedCourtOrder> all(ElectionId electionId) {
        return orders.all(electionId.value());
    }

    /**
     * Records an order and gives its number. Throws {@link IllegalArgumentException} where there is no such election.
     */
    @Transactional
    public int record(@Valid RecordCourtOrder command) {
        OfficeUser supervisor = access.demand(Permission.RECORD_ORDERS);
        ElectionId id = command.electionId();
        elections.zone(id);
        CourtOrder order = command.order();
        int number = orders.insert(id, order);
        rooms.publishEvent(new CourtOrderRecorded(id, number, order.envelopeNos(), true));
        enter(id, number, order, supervisor, "order_recorded");
        return number;
    }

    /**
     * Records that an order now stands otherwise: in force, final, set aside. A change that comes with an old version
     * is refused with {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public void change(ElectionId electionId, int orderNo, int version, CourtOrder.Status standing) {
        OfficeUser supervisor = access.demand(Permission.RECORD_ORDERS);
        orders.changeStanding(electionId, orderNo, version, standing);
        CourtOrder order = orders.find(electionId, orderNo).order();
        rooms.publishEvent(new CourtOrderRecorded(electionId, orderNo, order.envelopeNos(), false));
        enter(electionId, orderNo, order, supervisor, "order_standing_changed");
    }

    private void enter(ElectionId id, int number, CourtOrder order, OfficeUser supervisor, String act) {
        ledger.record(LedgerChain.of(id), supervisor.actor(), act, "order-" + number, payload(order));
    }

    /** What an observer may read; court and scope are free text and stay in the office. */
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
