package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.adjudication.questions.Question;

/** One combination of the facts that a question reads, each known or unknown; a read of any other fact is a fault. */
record Tuple(Map<Fact<?>, @Nullable Set<? extends FactWord>> words) implements FactReader {

    /** Every combination of the facts that the question declares. */
    static List<Tuple> of(Question question) {
        List<Tuple> tuples = List.of(new Tuple(Map.of()));
        for (Fact<?> fact : Fact.all()) {
            if (question.reads().contains(fact)) {
                tuples = extended(tuples, fact, states(fact));
            }
        }
        return tuples;
    }

    /** Every tuple in which what is unknown here is known. */
    List<Tuple> completions() {
        List<Tuple> complete = List.of(new Tuple(Map.of()));
        for (Map.Entry<Fact<?>, @Nullable Set<? extends FactWord>> entry : words.entrySet()) {
            List<@Nullable Set<? extends FactWord>> states = new ArrayList<>();
            if (entry.getValue() == null) {
                states.addAll(states(entry.getKey()));
                states.remove(null);
            } else {
                states.add(entry.getValue());
            }
            complete = extended(complete, entry.getKey(), states);
        }
        return complete;
    }

    boolean hasUnknown() {
        return words.containsValue(null);
    }

    long known() {
        return words.values().stream().filter(value -> value != null).count();
    }

    boolean holds(Fact<?> fact, FactWord word) {
        Set<? extends FactWord> held = words.get(fact);
        return held != null && held.contains(word);
    }

    /** The same tuple with one fact changed. */
    Tuple with(Fact<?> fact, Set<? extends FactWord> value) {
        Map<Fact<?>, @Nullable Set<? extends FactWord>> changed = new LinkedHashMap<>(words);
        changed.put(fact, value);
        return new Tuple(changed);
    }

    @Override
    @SuppressWarnings("unchecked") // states() puts only a fact's own words beside it
    public <V extends Enum<V> & FactWord> @Nullable Set<V> all(Fact<V> fact) {
        if (!words.containsKey(fact)) {
            throw new IllegalStateException("the question reads " + fact.key() + ", which it does not declare");
        }
        return (Set<V>) words.get(fact);
    }

    /** As a counterexample reads: {@code check_in is voted (a person saw the voter's signature in the poll book)}. */
    String sentence() {
        List<String> parts = new ArrayList<>();
        words.forEach((fact, value) -> parts.add(fact.key() + " is " + inWords(value)));
        return String.join(", ", parts);
    }

    private static String inWords(@Nullable Set<? extends FactWord> value) {
        if (value == null) {
            return "not known";
        }
        if (value.isEmpty()) {
            return "empty";
        }
        List<? extends FactWord> sorted =
                value.stream().sorted(Comparator.comparing(Code::code)).toList();
        return String.join(" and ", sorted.stream().map(Code::code).toList()) + " ("
                + String.join("; ", sorted.stream().map(FactWord::meaning).toList()) + ")";
    }

    private static List<Tuple> extended(
            List<Tuple> tuples, Fact<?> fact, List<@Nullable Set<? extends FactWord>> states) {
        List<Tuple> extended = new ArrayList<>();
        for (Tuple tuple : tuples) {
            for (Set<? extends FactWord> state : states) {
                Map<Fact<?>, @Nullable Set<? extends FactWord>> words = new LinkedHashMap<>(tuple.words);
                words.put(fact, state);
                extended.add(new Tuple(words));
            }
        }
        return extended;
    }

    /** Unknown, and each word; for a fact of which several words may hold, every set of them. */
    private static List<@Nullable Set<? extends FactWord>> states(Fact<?> fact) {
        List<@Nullable Set<? extends FactWord>> states = new ArrayList<>();
        states.add(null);
        List<? extends FactWord> words = fact.words();
        if (!fact.severalMayHold()) {
            words.forEach(word -> states.add(Set.of(word)));
            return states;
        }
        for (int mask = 0; mask < 1 << words.size(); mask++) {
            Set<FactWord> set = new LinkedHashSet<>();
            for (int bit = 0; bit < words.size(); bit++) {
                if ((mask >> bit & 1) == 1) {
                    set.add(words.get(bit));
                }
            }
            states.add(set);
        }
        return states;
    }
}
