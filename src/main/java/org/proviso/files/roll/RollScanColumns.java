package org.proviso.files.roll;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.spelling.RollLine;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;

/**
 * Where the columns stand that the index needs.
 *
 * @param cells for each column of the file the cell it is, or null
 * @param end the place in the file after the header's line
 */
@SuppressWarnings("ArrayRecordComponent") // Compared by what is in the array, see below.
record RollScanColumns(RollLine.@Nullable Cell[] cells, long end) {

    private static final int LONGEST_HEADER = 1 << 16;

    /** Reads the header as the careful reader does; null where it is not a plain line. */
    static @Nullable RollScanColumns of(Path file, CsvColumns columns, Consumer<String> warn) throws IOException {
        RollLine.@Nullable Cell[] cells;
        try (CsvTable table = CsvTable.open(file, columns, warn)) {
            cells = new RollLine.@Nullable Cell[table.width()];
            for (RollLine.Cell cell : RollLine.Cell.values()) {
                int column = table.column(cell.name().toLowerCase(Locale.ROOT));
                if (column >= 0) {
                    cells[column] = cell;
                }
            }
        }
        long end = endOfFirstLine(file);
        return end < 0 ? null : new RollScanColumns(cells, end);
    }

    private static long endOfFirstLine(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] first = in.readNBytes(LONGEST_HEADER);
            for (int i = 0; i < first.length; i++) {
                if (first[i] == '"' || (first[i] == '\r' && (i + 1 == first.length || first[i + 1] != '\n'))) {
                    return -1;
                }
                if (first[i] == '\n') {
                    return i == 0 ? -1 : i + 1;
                }
            }
            return -1;
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RollScanColumns columns && Arrays.equals(cells, columns.cells) && end == columns.end;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(cells);
    }

    @Override
    public String toString() {
        return Arrays.toString(cells);
    }
}
