package org.proviso.canvass.observers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.LedgerVeil;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The ledger of an election for observers: every act, the newest first. */
@Service
public class ObserverLedgerService {

    private final LedgerService ledger;
    private final LedgerVeil veil;
    private final AccessService access;

    ObserverLedgerService(LedgerService ledger, LedgerVeil veil, AccessService access) {
        this.ledger = ledger;
        this.veil = veil;
        this.access = access;
    }

    /** Acts, the newest first, and the number of the entry from which older ones begin (0 where there are none). */
    public record Acts(List<LedgerEntry> newestFirst, long older) {}

    /** The end of the chain. */
    @Transactional(readOnly = true)
    public ChainHead head(ElectionId electionId) {
        access.demand(Permission.READ_LEDGER);
        return ledger.head(LedgerChain.of(electionId));
    }

    /** A page of acts before an entry; the newest ones where {@code before} names none. */
    @Transactional(readOnly = true)
    public Acts acts(ElectionId electionId, long before, int page) {
        OfficeUser reader = access.demand(Permission.READ_LEDGER);
        LedgerChain chain = LedgerChain.of(electionId);
        long last = ledger.head(chain).sequence();
        long to = before <= 1 || before > last ? last : before - 1;
        long from = Math.max(0, to - page);
        List<LedgerEntry> acts =
                new ArrayList<>(veil.shown(chain, ledger.read(chain, from, (int) (to - from)), reader));
        Collections.reverse(acts);
        return new Acts(acts, from == 0 ? 0 : from + 1);
    }
}
