package org.proviso.election.orders;

import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.election.CourtOrderStore;
import org.proviso.election.RecordedCourtOrder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The orders of courts that the office has on file, for services. */
@BetweenRooms
@Service
public class CourtOrderService {

    private final CourtOrderStore orders;

    CourtOrderService(CourtOrderStore orders) {
        this.orders = orders;
    }

    /** The orders of an election in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<RecordedCourtOrder> all(ElectionId electionId) {
        return orders.all(electionId.value());
    }
}
