package org.proviso.review.replay;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.review.CaseState;

/**
 * Follows every case of an election by the entries of its chain through the graph of a case. An act that leads nowhere
 * from where the case was is a difference. Not thread-safe.
 */
final class CaseTrails {

    private final Map<EnvelopeNumber, CaseTrail> trails = new TreeMap<>();
    private final Set<String> waitedForKeying = new TreeSet<>();
    private final Set<String> received = new TreeSet<>();
    private final DifferenceCounter differences;
    private long loaded;

    CaseTrails(DifferenceCounter differences) {
        this.differences = differences;
    }

    /** The case as the ledger says it should be, and as it came in where no entry is about it. */
    CaseTrail of(EnvelopeNumber envelopeNo) {
        return trails.computeIfAbsent(
                envelopeNo,
                any -> new CaseTrail(
                        waitedForKeying.contains(envelopeNo.value()) ? CaseState.RECEIVED : CaseState.OPEN));
    }

    /** The envelopes of which the ledger says anything. */
    Set<EnvelopeNumber> envelopes() {
        return trails.keySet();
    }

    /** How many cases there should be. */
    long cases() {
        return loaded + received.size();
    }

    void follow(LedgerEntry entry) {
        if (entry.act().equals("election_loaded")) {
            if (entry.payload().get("envelopes") instanceof Number envelopes) {
                loaded = envelopes.longValue();
            }
            if (entry.payload().get("not_yet_keyed") instanceof Collection<?> numbers) {
                numbers.forEach(number -> waitedForKeying.add(number.toString()));
            }
        } else if (entry.act().equals("envelopes_filed")) {
            filed(entry);
        } else if (entry.act().equals("envelope_received")) {
            received.add(entry.subject());
            trails.put(new EnvelopeNumber(entry.subject()), new CaseTrail(CaseState.RECEIVED));
        } else {
            Optional<CaseLedgerEntry> known = CaseLedgerEntry.of(entry.act());
            known.ifPresent(act -> apply(act, entry));
        }
    }

    private void filed(LedgerEntry entry) {
        if (entry.payload().get("not_yet_keyed") instanceof Collection<?> numbers) {
            numbers.forEach(number -> waitedForKeying.add(number.toString()));
        }
        if (entry.payload().get("envelopes") instanceof Collection<?> numbers) {
            numbers.forEach(number -> {
                received.add(number.toString());
                CaseTrail unused = of(new EnvelopeNumber(number.toString()));
            });
        }
    }

    private void apply(CaseLedgerEntry act, LedgerEntry entry) {
        CaseTrail trail = of(new EnvelopeNumber(entry.subject()));
        CaseState before = trail.state();
        if (!act.apply(trail, entry, this)) {
            differences.add("Envelope " + entry.subject() + ": entry " + entry.sequence() + " of the ledger, "
                    + entry.act() + ", leads nowhere, because the case was " + before.spoken() + " then.");
        }
    }
}
