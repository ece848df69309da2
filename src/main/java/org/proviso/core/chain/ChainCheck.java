package org.proviso.core.chain;

import java.util.Optional;

/** Follows a chain entry by entry and names the first one that does not fit. Not thread-safe. */
public final class ChainCheck {

    private long sequence;
    private String head = LedgerEntry.BEFORE_FIRST;

    /** What is wrong with the next entry, or empty when it matches; checking stops at the first fault. */
    public Optional<String> next(LedgerEntry entry) {
        if (entry.sequence() != sequence + 1) {
            return Optional.of("entry " + entry.sequence() + " follows entry " + sequence
                    + ": an entry is missing, duplicated or out of order");
        }
        if (!entry.previousHash().equals(head)) {
            return Optional.of("entry " + entry.sequence() + " does not link to the entry before it");
        }
        if (!entry.computedHash().equals(entry.hash())) {
            return Optional.of("entry " + entry.sequence() + " was changed: its hash does not match its content");
        }
        sequence = entry.sequence();
        head = entry.hash();
        return Optional.empty();
    }

    public long entries() {
        return sequence;
    }

    public String headHash() {
        return head;
    }
}
