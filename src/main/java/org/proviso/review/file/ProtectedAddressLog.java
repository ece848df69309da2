package org.proviso.review.file;

import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Records each time someone was shown a protected address. */
@Service
@BetweenRooms
class ProtectedAddressLog {

    private final ActDoor door;
    private final AccessService access;

    ProtectedAddressLog(ActDoor door, AccessService access) {
        this.door = door;
        this.access = access;
    }

    /** In its own transaction: the one that reads the case writes nothing. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void note(EnvelopeKey key) {
        door.record(
                access.signedIn().actor(),
                LedgerLine.of(
                        LedgerChain.of(key.electionId()),
                        "protected_address_seen",
                        key.envelopeNo().value(),
                        Map.of()));
    }
}
