package org.proviso.review.replay;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.chain.LedgerEntry;

/** A row as the ledger says it should be, by the entry that made it; later entries may change it. Not thread-safe. */
final class ExpectedRow {

    private final long entry;
    private final Map<String, String> columns = new TreeMap<>();

    ExpectedRow(LedgerEntry entry) {
        this.entry = entry.sequence();
    }

    /** The entry that made it. */
    long entry() {
        return entry;
    }

    /** What stands in a column; nothing where no entry says anything. */
    String in(CaseColumn column) {
        return columns.getOrDefault(column.name(), "");
    }

    boolean has(String column, String text) {
        return text.equals(columns.getOrDefault(column, ""));
    }

    /** Sets a column from what an entry says; a list as a column has it. */
    ExpectedRow with(String column, @Nullable Object said) {
        if (said != null) {
            columns.put(column, text(said));
        }
        return this;
    }

    private static String text(Object said) {
        return said instanceof Collection<?> list
                ? list.stream().map(String::valueOf).collect(Collectors.joining(";"))
                : said.toString();
    }
}
