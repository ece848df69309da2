package org.proviso.review.file;

import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseKey;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Writes down that somebody had a protected address before them, each time they did. */
@Service
class ProtectedAddressLog {

    private final LedgerService ledger;
    private final AccessService access;

    ProtectedAddressLog(LedgerService ledger, AccessService access) {
        this.ledger = ledger;
        this.access = access;
    }

    /** In a transaction of its own: the one that reads the case writes nothing. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void note(CaseKey key) {
        ledger.record(
                LedgerChain.of(key.electionId()),
                access.signedIn().actor(),
                "protected_address_seen",
                key.envelopeNo(),
                Map.of());
    }
}
