package org.proviso.files.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.proviso.files.AtomicFile;

/**
 * Writes a CSV file whole or not at all: UTF-8, LF, quotes only where a cell needs them. Cells are written as they are.
 * A cell that begins with {@code =}, {@code +}, {@code -} or {@code @} is a formula to a spreadsheet; whoever opens
 * such a file there imports its columns as text, or {@link SpreadsheetText} wrote them.
 */
public final class CsvOutput {

    private final CsvWriter out;
    private final int width;

    private CsvOutput(CsvWriter out, int width) {
        this.out = out;
        this.width = width;
    }

    /**
     * A cell that no spreadsheet takes for a formula: one that begins like one gets an apostrophe in front of it. For
     * files that people open there.
     */
    public static String text(String cell) {
        return !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }

    /** Replaces the file by the header and the rows written. */
    public static void write(Path target, List<String> header, Consumer<CsvOutput> rows) {
        AtomicFile.write(target, text -> {
            CsvWriter writer = builder(header.size()).build(text);
            CsvOutput output = new CsvOutput(writer, header.size());
            output.row(header);
            rows.accept(output);
            writer.flush();
        });
    }

    /** Rows of so many cells to a writer that somebody else closes, for a file that is sent and not kept here. */
    public static void write(Writer target, int width, Consumer<CsvOutput> rows) {
        CsvWriter writer = builder(width).build(target);
        rows.accept(new CsvOutput(writer, width));
        try {
            writer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The header and the rows as one text, for standard output. */
    public static String text(List<String> header, Consumer<CsvOutput> rows) {
        StringWriter text = new StringWriter();
        CsvOutput output = new CsvOutput(builder(header.size()).bufferSize(0).build(text), header.size());
        output.row(header);
        rows.accept(output);
        return text.toString();
    }

    /** An empty cell that is alone in its row is quoted, as an empty line would be no row. */
    private static CsvWriter.CsvWriterBuilder builder(int width) {
        CsvWriter.CsvWriterBuilder builder = CsvWriter.builder().lineDelimiter(LineDelimiter.LF);
        return width == 1 ? builder.quoteStrategy(QuoteStrategies.EMPTY) : builder;
    }

    /** Writes one row, which has a cell for each column of the header. */
    public void row(String... cells) {
        row(List.of(cells));
    }

    public void row(List<String> cells) {
        if (cells.size() != width) {
            throw new IllegalArgumentException(cells.size() + " cells, but the header has " + width);
        }
        out.writeRecord(cells);
    }
}
