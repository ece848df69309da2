package org.proviso.core.chain;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One recorded act: its number in the chain from 1, when (ISO date and time with offset), who (a pseudonym), what, on
 * which envelope or thing, with which particulars, and the hash that ties it to the entry before it.
 */
public record LedgerEntry(
        long sequence,
        String at,
        String actor,
        String act,
        String subject,
        Map<String, Object> payload,
        String previousHash,
        String hash) {

    /** What stands before the first entry. */
    public static final String BEFORE_FIRST = "0".repeat(64);

    /** The entry with its hash computed. */
    static LedgerEntry sealed(
            long sequence,
            String at,
            String actor,
            String act,
            String subject,
            Map<String, Object> payload,
            String previousHash) {
        LedgerEntry open = new LedgerEntry(sequence, at, actor, act, subject, payload, previousHash, "");
        return new LedgerEntry(sequence, at, actor, act, subject, payload, previousHash, open.computedHash());
    }

    /** SHA-256 over the canonical JSON of everything but the hash itself. */
    public String computedHash() {
        return Sha256.of(CanonicalJson.of(content()));
    }

    /** The entry as one line of an exported ledger. */
    public String line() {
        Map<String, Object> all = content();
        all.put("hash", hash);
        return CanonicalJson.of(all);
    }

    private Map<String, Object> content() {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("sequence", sequence);
        content.put("at", at);
        content.put("actor", actor);
        content.put("act", act);
        content.put("subject", subject);
        content.put("payload", payload);
        content.put("previous_hash", previousHash);
        return content;
    }
}
