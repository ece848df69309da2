package org.proviso.files.csv;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideRow;

/**
 * One CSV file, read row by row: UTF-8, a header, columns in any order, every row as wide as the header. What is wrong
 * is an {@link InputException} with its line; unknown columns are named once in a warning. Empty lines are passed over;
 * a quote inside an unquoted cell is a character like any other.
 */
public final class CsvTable implements Closeable {

    private final Path path;
    private final String file;
    private final CsvReader<CsvCells> reader;
    private final CloseableIterator<CsvCells> rows;
    private final CsvCells cells;
    private final CsvHeader header;
    private final CsvRow row;
    private final List<UniqueKey> keys;

    /** After an invalid row it is not known where the next one begins. */
    private boolean isBroken;

    private CsvTable(Path path, CsvColumns columns, Consumer<String> warn) throws IOException {
        this.path = path;
        this.file = path.getFileName().toString();
        this.cells = new CsvCells(file);
        this.reader = CsvReader.builder()
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(CsvCells.LONGEST_RECORD)
                .build(cells, new Utf8Reader(path));
        this.rows = reader.iterator();
        try {
            if (!advance()) {
                throw new InputException(file, 0, "", "is empty; the first row must name the columns");
            }
            this.header = new CsvHeader(file, columns, cells, warn);
        } catch (RuntimeException e) {
            reader.close();
            throw e;
        }
        this.row = new CsvRow(file, header, cells);
        this.keys = columns.keys().stream()
                .map(key -> new UniqueKey(file, key, row, this::keyAt))
                .toList();
    }

    /** Opens the file and reads its header. */
    public static CsvTable open(Path path, CsvColumns columns, Consumer<String> warn) {
        String file = path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new InputException(
                    file, 0, "", "is missing from " + path.toAbsolutePath().getParent());
        }
        try {
            return new CsvTable(path, columns, warn);
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    /** The header as it stands in the file, for rows that are kept without it. */
    public static String headerAsItCame(Path path) {
        try (CsvTable table = open(path, CsvColumns.of(), warning -> {})) {
            return table.cells.asItCame();
        }
    }

    /** Reads the whole file: every row, or the exception that names every bad one. */
    public static <T> NumberedRows<T> read(Path path, CsvColumns columns, Consumer<String> warn, RowReader<T> each) {
        return read(path, columns, warn, null, each);
    }

    /** The same of an outside list, whose bad rows are set aside where somebody takes them. */
    public static <T> NumberedRows<T> read(
            Path path, CsvColumns columns, Consumer<String> warn, @Nullable SetAside aside, RowReader<T> each) {
        List<T> values = new ArrayList<>();
        NumberedRows.LineNumbers lines = new NumberedRows.LineNumbers();
        each(path, columns, warn, aside, table -> () -> each.read(table.row), (line, value) -> {
            values.add(value);
            lines.add(line);
        });
        return new NumberedRows<>(path.getFileName().toString(), values, lines);
    }

    /**
     * Hands over what is made of one row after the other, with its line. Where a row is refused, the rest of the file is
     * still looked at, and the exception, which names every bad row, comes after the good rows above the first: the caller
     * then drops those.
     */
    public static <T> void each(
            Path path,
            CsvColumns columns,
            Consumer<String> warn,
            Function<CsvTable, Supplier<T>> rows,
            BiConsumer<Integer, T> each) {
        each(path, columns, warn, null, rows, each);
    }

    /**
     * The same of an outside list: a bad row goes where bad rows are taken, and the good ones below it are handed over
     * too. What leaves in doubt where a row ends refuses the whole file.
     */
    public static <T> void each(
            Path path,
            CsvColumns columns,
            Consumer<String> warn,
            @Nullable SetAside aside,
            Function<CsvTable, Supplier<T>> rows,
            BiConsumer<Integer, T> each) {
        try (CsvTable table = open(path, columns, warn)) {
            Supplier<T> row = rows.apply(table);
            if (aside != null) {
                table.eachGood(row, aside, each);
                return;
            }
            try {
                while (table.next()) {
                    each.accept(table.row.line(), row.get());
                }
            } catch (InputException first) {
                throw BadRowFinder.after(first, table, row);
            }
        }
    }

    /** Goes to the next row; false after the last one. */
    public boolean next() {
        if (!advance()) {
            return false;
        }
        demandWidth();
        keys.forEach(UniqueKey::check);
        return true;
    }

    /** A row set aside does not take its key from a good row further down, so the key is looked at last. */
    private <T> void eachGood(Supplier<T> read, SetAside aside, BiConsumer<Integer, T> each) {
        while (advance()) {
            demandEnd();
            T value;
            try {
                demandWidth();
                value = read.get();
                keys.forEach(UniqueKey::check);
            } catch (InputException wrong) {
                aside.take(SetAsideRow.of(wrong, cells.asItCame()));
                continue;
            }
            each.accept(row.line(), value);
        }
    }

    private void demandWidth() {
        if (cells.count() != header.size()) {
            String fields = cells.count() == 1 ? "1 field" : cells.count() + " fields";
            throw row.wrong("has " + fields + " but the header has " + header.size());
        }
    }

    /** A quote that closes only in a later row swallows the rows between: they must not be set aside unseen as one. */
    private void demandEnd() {
        if (cells.count() != header.size() && cells.isOverSeveralLines()) {
            throw row.wrong("goes over several lines and has " + cells.count() + " fields but the header has "
                    + header.size() + "; check for an opening quote that is never closed");
        }
    }

    /** The row last gone to: one object, refilled by {@link #next()}, so take from it what is to be kept. */
    public CsvRow row() {
        return row;
    }

    /** The column's place, read once before the rows; -1 for a missing optional column. */
    public int column(String name) {
        return header.index(name);
    }

    /** How many columns the header has. */
    public int width() {
        return header.size();
    }

    @Override
    public void close() {
        try {
            reader.close();
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private boolean advance() {
        try {
            if (isBroken || !rows.hasNext()) {
                return false;
            }
            rows.next();
            return true;
        } catch (CsvParseException e) {
            isBroken = true;
            throw e.getCause() instanceof InputException cause ? cause : unparsable(e);
        } catch (UncheckedIOException e) {
            isBroken = true;
            throw unreadable(file, Objects.requireNonNull(e.getCause(), "an unchecked one wraps one"));
        }
    }

    private InputException unparsable(CsvParseException e) {
        int line = cells.line();
        try {
            String reason = UnreadableRow.reason(path, line).orElse("is not a valid row: " + e.getMessage());
            return new InputException(file, line, "", reason);
        } catch (IOException again) {
            return unreadable(file, again);
        }
    }

    /** Reads the file again up to a line: only when two keys have the same hash, which is all but surely a double. */
    private List<String> keyAt(int line, List<String> key) {
        try (CsvTable again = open(path, new CsvColumns(key, List.of(), List.of()), warning -> {})) {
            while (again.advance()) {
                if (again.cells.line() == line) {
                    return key.stream().map(again.row::text).toList();
                }
            }
        }
        throw new InputException(file, line, "", "changed while it was being read");
    }

    private static InputException unreadable(String file, IOException cause) {
        InputException wrong = new InputException(file, 0, "", "cannot be read: " + cause);
        wrong.initCause(cause);
        return wrong;
    }

    /** Makes one record of one row. */
    @FunctionalInterface
    public interface RowReader<T> {
        T read(CsvRow row);
    }
}
