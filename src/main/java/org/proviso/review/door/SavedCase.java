package org.proviso.review.door;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.review.EnvelopeCase;

/** A case as it is after an act that is still to be recorded; after a refusal nothing of this happens. */
public final class SavedCase {

    private final EnvelopeKey key;
    private final SortedSet<EnvelopeKey> others;
    private final SavedCases<EnvelopeCase> saved;

    SavedCase(EnvelopeKey key, SortedSet<EnvelopeKey> others, SavedCases<EnvelopeCase> saved) {
        this.key = key;
        this.others = others;
        this.saved = saved;
    }

    /** The act says something new of the case and of those it touches: they are assessed anew before it is recorded. */
    public SavedCase assessAnew() {
        SortedSet<EnvelopeKey> touched = new TreeSet<>(others);
        touched.add(key);
        saved.assessAnew(touched);
        return this;
    }

    /** The act rests on what was assessed for it: the later rooms are told that. */
    public SavedCase assessedAs(CaseReport report) {
        saved.assessedAs(key, report);
        return this;
    }

    /** Records the act with what observers may read of it. */
    public ActResult<EnvelopeCase> record(String act, Supplier<Map<String, Object>> payload) {
        return saved.record(act, () -> Map.of(key.envelopeNo(), payload.get()));
    }

    /** Records the act, of which there is nothing more to say. */
    public ActResult<EnvelopeCase> record(String act) {
        return record(act, Map::of);
    }
}
