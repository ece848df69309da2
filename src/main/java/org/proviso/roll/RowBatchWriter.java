package org.proviso.roll;

import java.io.Closeable;
import org.jspecify.annotations.Nullable;

/**
 * Takes checked rows into a table slice by slice, all in the transaction that runs. A slice is small enough for H2 to read
 * it without laying it on disk a second time (its limit is 40,000 rows).
 */
final class RowBatchWriter implements Closeable {

    private static final int SLICE = 20_000;

    private final BulkLoadStore copies;
    private final String table;
    private final String columns;
    private BulkLoadFile slice = new BulkLoadFile();
    private int loaded;

    RowBatchWriter(BulkLoadStore copies, String table, String columns) {
        this.copies = copies;
        this.table = table;
        this.columns = columns;
    }

    void add(@Nullable Object[] cells) {
        slice.add(cells);
        if (slice.rows() == SLICE) {
            load();
            slice = new BulkLoadFile();
        }
    }

    /** How many rows were taken by now. */
    int rows() {
        return loaded + slice.rows();
    }

    /** Loads what is left; no row may be added any more. */
    void finish() {
        if (slice.rows() > 0) {
            copies.load(table, columns, slice.written());
        }
    }

    private void load() {
        copies.load(table, columns, slice.written());
        loaded += slice.rows();
        slice.close();
    }

    @Override
    public void close() {
        slice.close();
    }
}
