package org.proviso.core.chain;

import java.util.Map;

/** Where a chain ends: the number of its last entry and that entry's hash, which vouches for all before it. */
public record ChainHead(long sequence, String hash) {

    /** Before the first entry. */
    public static final ChainHead EMPTY = new ChainHead(0, LedgerEntry.BEFORE_FIRST);

    /** The entry that follows, with its hash computed. */
    public LedgerEntry next(String at, String actor, String act, String subject, Map<String, Object> payload) {
        return LedgerEntry.sealed(sequence + 1, at, actor, act, subject, Map.copyOf(payload), hash);
    }

    /** The head once that entry stands. */
    public static ChainHead after(LedgerEntry entry) {
        return new ChainHead(entry.sequence(), entry.hash());
    }
}
