package org.proviso.files;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Looks for further bad rows once one is found, so that an office mends its file once and not row by row. */
final class BadRows {

    private static final int SHOWN = 50;

    private BadRows() {}

    /** The exception that names all bad rows: the first itself where it is the only one. */
    static InputException after(InputException first, CsvTable table, Runnable readRow) {
        List<InputException> shown = new ArrayList<>();
        long more = 0;
        int last = first.line();
        boolean goesOn = true;
        while (goesOn) {
            try {
                goesOn = table.next();
                if (goesOn) {
                    readRow.run();
                }
            } catch (InputException wrong) {
                // A row that cannot be passed over (a quote never closed, bytes that are not UTF-8) ends the look.
                goesOn = wrong.line() > last;
                last = wrong.line();
                if (goesOn && shown.size() < SHOWN) {
                    shown.add(wrong);
                } else if (goesOn) {
                    more++;
                }
            }
        }
        return shown.isEmpty() ? first : joined(first, shown, more);
    }

    private static InputException joined(InputException first, List<InputException> shown, long more) {
        String others = shown.stream().map(BadRows::told).collect(Collectors.joining("; "));
        String rest = more == 0 ? "" : "; and " + more + " more";
        return new InputException(
                first.file(),
                first.line(),
                first.column(),
                first.reason() + ". " + (1 + shown.size() + more) + " rows are bad in all; also " + others + rest);
    }

    private static String told(InputException wrong) {
        String column = wrong.column().isEmpty() ? "" : ", column " + wrong.column();
        return "line " + wrong.line() + column + ": " + wrong.reason();
    }
}
