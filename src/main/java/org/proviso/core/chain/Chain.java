package org.proviso.core.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A chain of entries in the making, each tied to the one before. Not thread-safe. */
public final class Chain {

    private final List<LedgerEntry> entries = new ArrayList<>();

    /** Records an act at the end of the chain and returns its entry. */
    public LedgerEntry record(String at, String actor, String act, String subject, Map<String, Object> payload) {
        LedgerEntry entry =
                LedgerEntry.sealed(entries.size() + 1L, at, actor, act, subject, Map.copyOf(payload), headHash());
        entries.add(entry);
        return entry;
    }

    /** The hash of the last entry: printed on minutes and reports, it vouches for all before it. */
    public String headHash() {
        return entries.isEmpty()
                ? LedgerEntry.BEFORE_FIRST
                : entries.get(entries.size() - 1).hash();
    }

    public List<LedgerEntry> entries() {
        return List.copyOf(entries);
    }
}
