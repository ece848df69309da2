package org.proviso.review.file;

import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.core.EnvelopeKey;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Records each time someone was shown a protected address. */
@Service
class ProtectedAddressLog {

    private final LedgerService ledger;
    private final AccessService access;

    ProtectedAddressLog(LedgerService ledger, AccessService access) {
        this.ledger = ledger;
        this.access = access;
    }

    /** In its own transaction: the one that reads the case writes nothing. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void note(EnvelopeKey key) {
        ledger.record(
                LedgerChain.of(key.electionId()),
                access.signedIn().actor(),
                "protected_address_seen",
                key.envelopeNo().value(),
                Map.of());
    }
}
