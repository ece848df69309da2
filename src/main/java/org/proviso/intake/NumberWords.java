package org.proviso.intake;

import java.util.List;
import java.util.function.Function;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;

/** Numbers of envelopes in a sentence. */
public final class NumberWords {

    private NumberWords() {}

    /** {@code P-1001}, or of another election {@code P-1001 (Tamarack County Primary)}. */
    public static String spoken(EnvelopeKey key, ElectionId electionId, Function<ElectionId, String> name) {
        return key.electionId().equals(electionId)
                ? key.envelopeNo().value()
                : key.envelopeNo() + " (" + name.apply(key.electionId()) + ")";
    }

    /** {@code P-1001}, {@code P-1001 and P-1002}, {@code P-1001, P-1002 and P-1003}. */
    public static String listed(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
