package org.proviso.database;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * How often each SQL statement was sent while something was done on this thread, and how many rows were read. A batch is
 * sent once, however many rows it writes.
 */
public record Statements(Map<String, Integer> times, int rows) {

    private static final ThreadLocal<@Nullable Map<String, Integer>> COUNTED = new ThreadLocal<>();
    private static final ThreadLocal<Integer> ROWS = ThreadLocal.withInitial(() -> 0);

    /** Counts what the act sends by way of a {@link CountingDataSource}, from the connection that it takes itself. */
    public static Statements of(Runnable act) {
        Map<String, Integer> times = new TreeMap<>();
        COUNTED.set(times);
        ROWS.remove();
        try {
            act.run();
        } finally {
            COUNTED.remove();
        }
        return new Statements(times, ROWS.get());
    }

    /** The same of an act that gives something, which nobody wants here. */
    public static Statements of(Supplier<?> act) {
        return of((Runnable) act::get);
    }

    static void row() {
        if (areCounted()) {
            ROWS.set(ROWS.get() + 1);
        }
    }

    static boolean areCounted() {
        return COUNTED.get() != null;
    }

    static void sent(String sql) {
        Map<String, Integer> times = COUNTED.get();
        if (times != null) {
            times.merge(sql.replaceAll("\\s+", " ").strip(), 1, Integer::sum);
        }
    }

    public int all() {
        return times.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** The statements that were sent oftener than before, by how much: what a growing election makes more of. */
    public Map<String, Integer> moreThan(Statements before) {
        Map<String, Integer> more = new TreeMap<>();
        times.forEach((sql, number) -> {
            int added = number - before.times.getOrDefault(sql, 0);
            if (added > 0) {
                more.put(sql, added);
            }
        });
        return more;
    }
}
