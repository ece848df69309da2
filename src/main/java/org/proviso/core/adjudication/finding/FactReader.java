package org.proviso.core.adjudication.finding;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/** What a question sees of a case: the facts it declared, each known or unknown, and nothing else. */
public interface FactReader {

    /** The values that hold, or null when unknown. */
    <V extends Enum<V> & FactWord> @Nullable Set<V> all(Fact<V> fact);

    /** The one value that holds, or null when unknown. */
    default <V extends Enum<V> & FactWord> @Nullable V one(Fact<V> fact) {
        Set<V> words = all(fact);
        return words == null || words.isEmpty() ? null : words.iterator().next();
    }
}
