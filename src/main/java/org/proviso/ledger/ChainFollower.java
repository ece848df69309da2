package org.proviso.ledger;

import java.util.List;
import java.util.Optional;
import org.proviso.core.chain.ChainCheck;
import org.proviso.core.chain.ChainHead;

/** Follows a chain page by page up to the head it had when the check began. Not thread-safe. */
final class ChainFollower {

    private final ChainHead head;
    private final ChainCheck check = new ChainCheck();
    private Optional<String> fault = Optional.empty();

    ChainFollower(ChainHead head) {
        this.head = head;
    }

    boolean goesOn() {
        return fault.isEmpty() && check.entries() < head.sequence();
    }

    long sequence() {
        return check.entries();
    }

    void follow(List<LedgerRow> rows) {
        if (rows.isEmpty()) {
            fault = Optional.of("the chain ends at entry " + check.entries() + ", but its head is entry "
                    + head.sequence() + ": entries are missing at the end");
        }
        for (LedgerRow row : rows) {
            if (goesOn()) {
                fault = row.misspelled().or(() -> check.next(row.entry()));
            }
        }
    }

    LedgerVerdict verdict() {
        if (fault.isEmpty() && !check.headHash().equals(head.hash())) {
            fault = Optional.of("the last entry is not the one named by the head of the chain");
        }
        return new LedgerVerdict(check.entries(), check.headHash(), fault);
    }
}
