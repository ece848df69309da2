package org.proviso.files.table;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A list as XLSX: its sheet has the headings and the rows, a second one says what the file is about. Words are written as
 * text, which no spreadsheet reads as a formula, so they need no apostrophe in front.
 */
final class XlsxList {

    /** The most characters of a cell (Excel specifications and limits, Microsoft). */
    private static final int LONGEST = 32_767;

    private static final int TOGETHER = 500;

    private final Worksheet sheet;
    private final List<TableColumn> columns;
    private int line;

    private XlsxList(Worksheet sheet, List<TableColumn> columns) {
        this.sheet = sheet;
        this.columns = columns;
    }

    static void write(TableHead head, OutputStream out, Consumer<TableRows> rows) throws IOException {
        Workbook book = new Workbook(out, "Proviso", null);
        Worksheet sheet = book.newWorksheet("List");
        sheet.freezePane(0, 1);
        XlsxList list = new XlsxList(sheet, head.columns());
        list.headings();
        rows.accept(list::row);
        sheet.finish();
        about(book.newWorksheet("About this file"), head);
        book.finish();
    }

    private static void about(Worksheet sheet, TableHead head) throws IOException {
        sheet.inlineString(0, 0, "List");
        sheet.inlineString(0, 1, text(head.title()));
        int line = 1;
        for (TableHead.About about : head.about()) {
            sheet.inlineString(line, 0, text(about.name()));
            sheet.inlineString(line, 1, text(about.words()));
            line++;
        }
        sheet.finish();
    }

    private void headings() {
        for (int at = 0; at < columns.size(); at++) {
            sheet.inlineString(line, at, text(columns.get(at).heading()));
            sheet.style(line, at).bold().set();
        }
        line++;
    }

    private void row(List<String> cells) {
        for (int at = 0; at < columns.size(); at++) {
            String cell = cells.get(at);
            if (columns.get(at).isNumber(cell)) {
                sheet.value(line, at, Long.valueOf(TableColumn.digits(cell)));
            } else if (!cell.isEmpty()) {
                sheet.inlineString(line, at, text(cell));
            }
        }
        line++;
        if (line % TOGETHER == 0) {
            flush();
        }
    }

    private void flush() {
        try {
            sheet.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Without the characters that XML does not have, and no longer than a cell may be. */
    private static String text(String words) {
        String clean = words.codePoints()
                .filter(XlsxList::isXml)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST - 1) + "\u2026";
    }

    private static boolean isXml(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point < 0xD800)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }
}
