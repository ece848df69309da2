package org.proviso.roll;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Checked rows on their way into a database's own CSV load, in a file that only this program may read and that goes when
 * it is closed. Text is quoted, also when empty; what is unknown is an empty cell without quotes.
 */
final class BulkLoadFile implements Closeable {

    private final Path path;
    private final BufferedWriter out;
    private int rows;

    BulkLoadFile() {
        try {
            path = Files.createTempFile("rows", ".csv");
            out = Files.newBufferedWriter(path, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be created.", e);
        }
    }

    void add(@Nullable Object[] cells) {
        try {
            for (int i = 0; i < cells.length; i++) {
                if (i > 0) {
                    out.write(',');
                }
                write(cells[i]);
            }
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be written.", e);
        }
        rows++;
    }

    private void write(@Nullable Object cell) throws IOException {
        if (cell instanceof String text) {
            out.write('"');
            out.write(text.indexOf('"') < 0 ? text : text.replace("\"", "\"\""));
            out.write('"');
        } else if (cell != null) {
            out.write(cell.toString());
        }
    }

    int rows() {
        return rows;
    }

    /** The file with all rows in it; nothing may be added any more. */
    Path written() {
        try {
            out.close();
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be written.", e);
        }
        return path;
    }

    @Override
    public void close() {
        try {
            out.close();
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be deleted.", e);
        }
    }
}
