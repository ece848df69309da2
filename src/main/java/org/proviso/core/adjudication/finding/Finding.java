package org.proviso.core.adjudication.finding;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.FactWord;

/** What is known about one fact: the values that hold (null when unknown), and the evidence for it. */
public record Finding(@Nullable Set<? extends FactWord> words, List<Evidence> evidence) {

    public static final Finding UNKNOWN = new Finding(null, List.of());

    /** Unknown, with what was looked at in vain. */
    public static Finding unknown(Evidence... evidence) {
        return new Finding(null, List.of(evidence));
    }

    public static Finding of(FactWord word, Evidence... evidence) {
        return new Finding(Set.of(word), List.of(evidence));
    }

    public boolean isKnown() {
        return words != null;
    }

    /** Known, with this word among those that hold. */
    public boolean says(FactWord word) {
        return words != null && words.contains(word);
    }
}
