package org.proviso.files.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts what does not fit: each value of a column up to a limit, and the rest of the column together. */
final class Misfits {

    /** So many values of one column are told apart. */
    private static final int TOLD = 50;

    static final String OTHERS = "...";

    private final Map<String, Map<String, Misfit>> byField = new LinkedHashMap<>();

    void add(String field, String column, String value, int line, boolean refused) {
        Map<String, Misfit> values = byField.computeIfAbsent(field, name -> new LinkedHashMap<>());
        String shown = values.containsKey(value) || values.size() < TOLD ? value : OTHERS;
        values.merge(
                shown,
                new Misfit(field, column, shown, 1, line, refused),
                (had, more) -> new Misfit(field, column, shown, had.count() + 1, had.firstLine(), refused));
    }

    /** All of them, column after column, each column's in the order met. */
    List<Misfit> all() {
        List<Misfit> all = new ArrayList<>();
        byField.values().forEach(values -> all.addAll(values.values()));
        return List.copyOf(all);
    }
}
