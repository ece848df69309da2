package org.proviso.files.mapping;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;
import org.proviso.files.csv.Utf8Reader;

/** The rows of an office's file, one after the other, the header like any other. Empty lines are passed over. */
final class SourceRows implements Closeable {

    /** One row: the line it starts in, and its cells without the spaces around them. */
    record Row(int line, List<String> cells) {}

    private static final int LONGEST_RECORD = 1_000_000;

    /** No file may hold it, so nothing is taken for a quote. */
    private static final char NO_QUOTE = '\0';

    private final String file;
    private final Closeable reader;
    private final Supplier<@Nullable Row> rows;
    private int line;

    SourceRows(Path path, SourceForm form) {
        file = path.getFileName().toString();
        try {
            Reader characters = characters(path, form);
            if (form.delimiter() == Delimiter.FIXED_WIDTH) {
                BufferedReader lines = new BufferedReader(characters);
                reader = lines;
                rows = () -> fixed(lines, form.layout());
            } else {
                CsvReader<CsvRecord> records = CsvReader.builder()
                        .fieldSeparator(form.delimiter().sign())
                        .quoteCharacter(form.quoted() ? '"' : NO_QUOTE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .allowUnclosedQuote(false)
                        .maxBufferSize(LONGEST_RECORD)
                        .ofCsvRecord(characters);
                CloseableIterator<CsvRecord> each = records.iterator();
                reader = records;
                rows = () -> delimited(each);
            }
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** The next row; null after the last one. */
    @Nullable
    Row next() {
        try {
            return rows.get();
        } catch (CsvParseException e) {
            if (e.getCause() instanceof InputException cause) {
                throw cause;
            }
            throw new InputException(file, line + 1, "", "this row or one below it cannot be read: " + e.getMessage());
        } catch (UncheckedIOException e) {
            throw unreadable(e);
        }
    }

    private @Nullable Row delimited(CloseableIterator<CsvRecord> each) {
        if (!each.hasNext()) {
            return null;
        }
        CsvRecord row = each.next();
        line = Math.toIntExact(row.getStartingLineNumber());
        return new Row(line, stripped(row.getFields()));
    }

    private @Nullable Row fixed(BufferedReader lines, List<FixedColumn> layout) {
        try {
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                line++;
                if (!text.isBlank()) {
                    String whole = text;
                    return new Row(
                            line,
                            stripped(layout.stream().map(at -> at.cell(whole)).toList()));
                }
            }
            return null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> stripped(List<String> cells) {
        List<String> stripped = new ArrayList<>(cells.size());
        cells.forEach(cell -> stripped.add(cell.strip()));
        return stripped;
    }

    private static Reader characters(Path path, SourceForm form) throws IOException {
        if (form.encoding().equals(StandardCharsets.UTF_8)) {
            return new Utf8Reader(path);
        }
        return new InputStreamReader(
                Files.newInputStream(path),
                form.encoding()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    private InputException unreadable(Exception cause) {
        for (Throwable at = cause; at != null; at = at.getCause()) {
            if (at instanceof InputException wrong) {
                return wrong;
            }
            if (at instanceof CharacterCodingException) {
                return new InputException(
                        file, line + 1, "", "here or below are bytes that are not of the encoding named");
            }
        }
        return new InputException(file, 0, "", "cannot be read: " + cause);
    }

    @Override
    public void close() {
        try {
            reader.close();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }
}
