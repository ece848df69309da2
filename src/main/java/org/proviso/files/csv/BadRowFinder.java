package org.proviso.files.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.files.InputException;

/** Looks for further bad rows once one is found, so that an office mends its file once and not row by row. */
public final class BadRowFinder {

    /** With the first these are a hundred. */
    private static final int OTHERS = 99;

    private BadRowFinder() {}

    /** The exception that names all bad rows: the first itself where it is the only one. */
    static InputException after(InputException first, CsvTable table, Supplier<?> readRow) {
        List<InputException> shown = new ArrayList<>();
        long more = 0;
        int last = first.line();
        boolean goesOn = true;
        while (goesOn) {
            try {
                goesOn = table.next();
                if (goesOn) {
                    Object unused = readRow.get();
                }
            } catch (InputException wrong) {
                // A row that cannot be passed over (a quote never closed, bytes that are not UTF-8) ends the look.
                goesOn = wrong.line() > last;
                last = wrong.line();
                if (goesOn && shown.size() < OTHERS) {
                    shown.add(wrong);
                } else if (goesOn) {
                    more++;
                }
            }
        }
        return InputException.ofAll(first, shown, more);
    }

    /** The same of rows that were looked at already; nothing where none is bad. */
    public static void refuse(List<InputException> bad) {
        if (!bad.isEmpty()) {
            int told = Math.min(bad.size(), 1 + OTHERS);
            throw InputException.ofAll(bad.get(0), bad.subList(1, told), bad.size() - told);
        }
    }
}
