package org.proviso.setup.first;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;

/** A file to begin from: the columns of a list and one invented row, both of the sample election that comes with the program. */
public final class TemplateFile {

    private static final String SAMPLE = "/sample-cases/tamarack-general/";

    /** The picture that the sample's row names is not in the template. */
    private static final String PICTURE = "signature_image";

    private TemplateFile() {}

    /** The columns and the invented row. */
    public static String text(NeededFile file) {
        return lines(file, 2);
    }

    /** The columns alone: a list with nothing in it. */
    public static String empty(NeededFile file) {
        return lines(file, 1);
    }

    private static String lines(NeededFile file, int count) {
        StringWriter text = new StringWriter();
        try (InputStream in = Objects.requireNonNull(
                        TemplateFile.class.getResourceAsStream(SAMPLE + file.file()), "comes with the program");
                CsvReader<CsvRecord> rows =
                        CsvReader.builder().ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8));
                CsvWriter out = CsvWriter.builder().build(text)) {
            Iterator<CsvRecord> row = rows.iterator();
            List<String> header = row.next().getFields();
            out.writeRecord(header);
            for (int written = 1; written < count && row.hasNext(); written++) {
                List<String> cells = new ArrayList<>(row.next().getFields());
                int picture = header.indexOf(PICTURE);
                if (picture >= 0) {
                    cells.set(picture, "");
                }
                out.writeRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
