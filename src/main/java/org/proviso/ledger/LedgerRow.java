package org.proviso.ledger;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.files.ledger.LedgerJsonReader;

/** An entry as the table holds it, the particulars as the text that was hashed. */
record LedgerRow(
        long sequence,
        String at,
        String actor,
        String act,
        String subject,
        String payload,
        String previousHash,
        String hash) {

    static LedgerRow of(LedgerEntry entry) {
        return new LedgerRow(
                entry.sequence(),
                entry.at(),
                entry.actor(),
                entry.act(),
                entry.subject(),
                CanonicalJson.of(entry.payload()),
                entry.previousHash(),
                entry.hash());
    }

    LedgerEntry entry() {
        return new LedgerEntry(sequence, at, actor, act, subject, particulars(), previousHash, hash);
    }

    /** What is wrong with the spelling, or empty: a text that is spelled otherwise than it was hashed was touched. */
    Optional<String> misspelled() {
        try {
            return CanonicalJson.of(LedgerJsonReader.object(payload)).equals(payload)
                    ? Optional.empty()
                    : Optional.of("entry " + sequence + " is not written in canonical JSON");
        } catch (IOException e) {
            return Optional.of("entry " + sequence + " was changed: its details cannot be read");
        }
    }

    private Map<String, Object> particulars() {
        try {
            return LedgerJsonReader.object(payload);
        } catch (IOException e) {
            throw new IllegalStateException(
                    "the details of ledger entry " + sequence + " cannot be read: " + e.getMessage(), e);
        }
    }
}
