package org.proviso.access;

import java.io.Writer;
import java.util.List;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.LedgerVerdict;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The ledger for everybody who works in the office or observes it: its entries, its check and its file. */
@Service
public class LedgerReadService {

    private final LedgerService ledger;
    private final LedgerVeil veil;
    private final AccessService access;

    LedgerReadService(LedgerService ledger, LedgerVeil veil, AccessService access) {
        this.ledger = ledger;
        this.veil = veil;
        this.access = access;
    }

    /** Where the chain ends now. */
    @Transactional(readOnly = true)
    public ChainHead head(LedgerChain chain) {
        access.demand(Permission.READ_LEDGER);
        return ledger.head(chain);
    }

    /** Up to {@code limit} entries that follow the entry of that number; from the start with 0. */
    @Transactional(readOnly = true)
    public List<LedgerEntry> read(LedgerChain chain, long after, int limit) {
        OfficeUser reader = access.demand(Permission.READ_LEDGER);
        return veil.shown(chain, ledger.read(chain, after, limit), reader);
    }

    /** Follows the whole chain to its head and names the first entry that does not fit. */
    @Transactional(readOnly = true)
    public LedgerVerdict verify(LedgerChain chain) {
        access.demand(Permission.READ_LEDGER);
        return ledger.verify(chain);
    }

    /** Writes the chain as it stands now, one entry a line, as {@code verify-ledger} reads it. */
    @Transactional(readOnly = true)
    public void export(LedgerChain chain, Writer out) {
        OfficeUser reader = access.demand(Permission.READ_LEDGER);
        veil.taken(chain, reader);
        ledger.export(chain, out);
    }
}
