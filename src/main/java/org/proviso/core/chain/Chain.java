package org.proviso.core.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A chain of entries in the making, each tied to the one before. Not thread-safe. */
public final class Chain {

    private final List<LedgerEntry> entries = new ArrayList<>();
    private ChainHead head = ChainHead.EMPTY;

    /** Records an act at the end of the chain and returns its entry. */
    public LedgerEntry record(String at, String actor, String act, String subject, Map<String, Object> payload) {
        LedgerEntry entry = head.next(at, actor, act, subject, payload);
        entries.add(entry);
        head = ChainHead.after(entry);
        return entry;
    }

    /** The hash of the last entry: printed on minutes and reports, it vouches for all before it. */
    public String headHash() {
        return head.hash();
    }

    public List<LedgerEntry> entries() {
        return List.copyOf(entries);
    }
}
