package org.proviso.files.mapping;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.files.InputException;

/**
 * Converts an office's file by its mapping to a file in our columns, row by row: one row for each of the office's, on the
 * same line wherever it can be.
 */
public final class Conversion {

    /** So many rows of a wrong width are told with their own count of cells. */
    private static final int TOLD = 10_000;

    private final Path source;
    private final Mapping mapping;
    private final Misfits misfits = new Misfits();
    private final SourceLines lines = new SourceLines();
    private final Map<Integer, Integer> wrongWidths = new HashMap<>();
    private final int ourWidth;
    private long rows;
    private long wrongRows;

    private Conversion(Path source, Mapping mapping) {
        this.source = source;
        this.mapping = mapping;
        this.ourWidth = OurFields.of(mapping.list()).size();
    }

    /** Writes the converted file; it says how it came about. */
    public static Converted write(Path source, Mapping mapping, Path target) {
        try (Writer text = Files.newBufferedWriter(target, StandardCharsets.UTF_8)) {
            return new Conversion(source, mapping).write(target, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first rows as they will be read, and what of the whole file does not fit. Nothing is written. */
    public static Preview preview(Path source, Mapping mapping, int most) {
        List<List<String>> shown = new ArrayList<>();
        Conversion conversion = new Conversion(source, mapping);
        SourceHeader header = conversion.each((row, cells) -> {
            if (shown.size() < most) {
                shown.add(cells);
            }
        });
        return new Preview(shown, conversion.rows, conversion.wrongRows, header.newColumns(), conversion.misfits.all());
    }

    private interface Sink {
        void take(SourceRows.Row row, List<String> cells) throws IOException;
    }

    private Converted write(Path target, Writer text) throws IOException {
        CsvWriter csv = CsvWriter.builder()
                .bufferSize(0)
                .lineDelimiter(LineDelimiter.LF)
                .build(text);
        csv.writeRecord(
                OurFields.of(mapping.list()).stream().map(OurField::name).toList());
        LineCount at = new LineCount();
        SourceHeader header = each((row, cells) -> {
            for (; at.line < row.line(); at.line++) {
                text.write('\n');
            }
            lines.add(at.line, row.line());
            csv.writeRecord(cells);
            at.after(cells);
        });
        text.flush();
        return new Converted(
                source.getFileName().toString(),
                target,
                mapping,
                rows,
                lines,
                Map.copyOf(wrongWidths),
                header.columns().size(),
                header.newColumns(),
                misfits.all());
    }

    private SourceHeader each(Sink sink) {
        EncodingFinder.refuseBinary(source);
        try (SourceRows all = new SourceRows(source, mapping.source())) {
            SourceRows.Row row = all.next();
            if (row == null) {
                throw new InputException(file(), 0, "", "is empty");
            }
            SourceHeader header = header(row);
            RowConverter converter = new RowConverter(mapping, header, misfits);
            for (row = mapping.source().header() ? all.next() : row; row != null; row = all.next()) {
                rows++;
                sink.take(row, cells(row, header.columns().size(), converter));
            }
            return header;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private SourceHeader header(SourceRows.Row first) {
        SourceForm form = mapping.source();
        if (!form.header() || form.delimiter() == Delimiter.FIXED_WIDTH) {
            return new SourceHeader(form.columns(), List.of());
        }
        return SourceHeader.of(file(), first, mapping);
    }

    /** A row of another width than its header is passed on cell by cell, in no width that our file could have. */
    private List<String> cells(SourceRows.Row row, int width, RowConverter converter) {
        int count = row.cells().size();
        while (count > width && row.cells().get(count - 1).isEmpty()) {
            count--;
        }
        if (count == width) {
            return converter.convert(row);
        }
        wrongRows++;
        if (wrongWidths.size() < TOLD) {
            wrongWidths.put(row.line(), row.cells().size());
        }
        List<String> asItCame = new ArrayList<>(row.cells());
        if (asItCame.size() == ourWidth) {
            asItCame.add("");
        }
        return asItCame;
    }

    private String file() {
        return source.getFileName().toString();
    }

    /** The line of the converted file that comes next, counted as a CSV reader does. */
    private static final class LineCount {

        private int line = 2;

        void after(List<String> cells) {
            line++;
            for (String cell : cells) {
                for (int i = 0; i < cell.length(); i++) {
                    char sign = cell.charAt(i);
                    boolean ends = sign == '\r' || (sign == '\n' && (i == 0 || cell.charAt(i - 1) != '\r'));
                    line += ends ? 1 : 0;
                }
            }
        }
    }
}
