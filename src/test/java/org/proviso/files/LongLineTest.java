package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;

/** A line of 200 MB must be refused once it is clear that no row is so long, not after it was read into memory. */
class LongLineTest {

    private static final int MEGABYTE = 1_000_000;
    private static final int LINE = 200 * MEGABYTE;

    @TempDir
    Path folder;

    @Test
    void refuses_one_endless_cell_without_holding_it() throws IOException {
        refusedCheaply(file((byte) 'x'), "is longer than the limit of 1,000,000 characters");
    }

    @Test
    void refuses_a_row_of_endless_empty_cells_without_holding_it() throws IOException {
        refusedCheaply(file((byte) ','), "is longer than the limit of 1,000,000 characters");
    }

    @Test
    void refuses_an_endless_quoted_cell_without_holding_it() throws IOException {
        refusedCheaply(file((byte) '\n', '"'), "check for an opening quote that is never closed");
    }

    private void refusedCheaply(Path file, String reason) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        refused(() -> CsvTable.read(file, CsvColumns.of("a", "b"), w -> {}, CsvRow::line), "long.csv", 3, "", reason);
        assertThat(threads.getCurrentThreadAllocatedBytes() - before)
                .as("bytes allocated")
                .isLessThan(40L * MEGABYTE);
    }

    private Path file(byte filler, char... start) throws IOException {
        Path file = folder.resolve("long.csv");
        byte[] block = new byte[MEGABYTE];
        Arrays.fill(block, filler);
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(("a,b\n1,2\n" + new String(start)).getBytes(StandardCharsets.UTF_8));
            for (int written = 0; written < LINE; written += MEGABYTE) {
                out.write(block);
            }
        }
        return file;
    }
}
