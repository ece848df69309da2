package org.proviso.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Counts the differences between tables and ledger and keeps the first. Not thread-safe. */
public final class DifferenceCounter {

    /** So many are named. */
    public static final int NAMED = 20;

    private final List<String> first = new ArrayList<>();
    private long differing;

    /** One more, in a sentence without personal data. */
    public void add(String sentence) {
        differing++;
        if (first.size() < NAMED) {
            first.add(sentence);
        }
    }

    /** Compares what the ledger says of each thing with what the tables have of it, both ways, in the order of the names. */
    public void compare(Map<String, String> said, Map<String, String> there) {
        Set<String> names = new TreeSet<>(said.keySet());
        names.addAll(there.keySet());
        for (String name : names) {
            String ledger = said.getOrDefault(name, "");
            String table = there.getOrDefault(name, "");
            if (!ledger.equals(table)) {
                add(name + ": the table has " + words(table) + ", the ledger has " + words(ledger) + ".");
            }
        }
    }

    private static String words(String value) {
        return value.isEmpty() ? "nothing" : value;
    }

    /** What there is, among so many things of that kind. */
    public TableComparison result(long things, String what) {
        return new TableComparison(what, things, differing, List.copyOf(first));
    }
}
