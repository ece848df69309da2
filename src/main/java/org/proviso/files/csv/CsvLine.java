package org.proviso.files.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** The cells of one row that is kept as it came. */
public final class CsvLine {

    private CsvLine() {}

    /** As many cells as there are; what is no row of a CSV file has none. */
    public static List<String> cells(String line) {
        try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(line)) {
            return rows.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        } catch (CsvParseException e) {
            return List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
