package org.proviso.ledger;

import java.util.Optional;

/** What following a chain found: how many entries fit, and what is wrong with the first that does not. */
public record LedgerVerdict(long entries, String headHash, Optional<String> fault) {

    public boolean isWhole() {
        return fault.isEmpty();
    }
}
