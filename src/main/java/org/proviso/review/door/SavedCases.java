package org.proviso.review.door;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;

/**
 * Cases as they are after an act that is still to be recorded; after a refusal nothing of this happens.
 *
 * @param <T> what is new by the act
 */
public final class SavedCases<T> {

    private final CaseDoor.Permitted permitted;
    private final ElectionId electionId;
    private final List<Refusal> refusals;
    private final @Nullable T now;
    private final SortedSet<EnvelopeKey> held = new TreeSet<>();
    private final SortedSet<EnvelopeKey> toAssess = new TreeSet<>();
    private final SortedMap<EnvelopeKey, CaseReport> known = new TreeMap<>();

    SavedCases(CaseDoor.Permitted permitted, ElectionId electionId, List<Refusal> refusals, @Nullable T now) {
        this.permitted = permitted;
        this.electionId = electionId;
        this.refusals = refusals;
        this.now = now;
    }

    SavedCases<T> holding(SortedSet<EnvelopeKey> keys) {
        held.addAll(keys);
        return this;
    }

    /** The act says something new of every case that is held for it. */
    public SavedCases<T> assessAnew() {
        return assessAnew(held);
    }

    SavedCases<T> assessAnew(SortedSet<EnvelopeKey> keys) {
        toAssess.addAll(keys);
        return this;
    }

    void assessedAs(EnvelopeKey key, CaseReport report) {
        known.put(key, report);
    }

    /** Records the act in one entry for each of these envelopes, in the order of the map. */
    public ActResult<T> record(String act, Supplier<Map<EnvelopeNumber, Map<String, Object>>> payloads) {
        T done = now;
        if (done == null) {
            return new ActResult.Refused<>(refusals);
        }
        permitted.finish(toAssess, known, () -> line(act, payloads.get()));
        return ActResult.accepted(done);
    }

    private LedgerLine line(String act, Map<EnvelopeNumber, Map<String, Object>> payloads) {
        Map<String, Map<String, Object>> bySubject = new LinkedHashMap<>();
        payloads.forEach((number, payload) -> bySubject.put(number.value(), payload));
        return new LedgerLine(LedgerChain.of(electionId), act, bySubject);
    }
}
