package org.proviso.files.table;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.function.Consumer;

/** The two kinds of file that a list is written as. Neither has a cell that a spreadsheet takes for a formula. */
public enum TableFormat {
    CSV("text/csv;charset=UTF-8"),
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    private final String contentType;

    TableFormat(String contentType) {
        this.contentType = contentType;
    }

    public String contentType() {
        return contentType;
    }

    /** {@code court-orders.csv} for <i>Court orders</i>. */
    public String fileName(String title) {
        String name =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return (name.isEmpty() ? "list" : name) + "." + name().toLowerCase(Locale.ROOT);
    }

    /** Writes the rows as they come, few of them in memory at a time. The stream stays open. */
    public void write(TableHead head, OutputStream out, Consumer<TableRows> rows) throws IOException {
        switch (this) {
            case CSV -> CsvList.write(head, out, rows);
            case XLSX -> XlsxList.write(head, out, rows);
        }
    }
}
