package org.proviso.files.csv;

/**
 * Text for a file that people open in a spreadsheet: a cell that would begin a formula there begins with an apostrophe
 * (OWASP, CSV Injection: {@code = + - @}, tab and carriage return; a line feed too).
 */
public final class SpreadsheetText {

    private static final String BEGINS_A_FORMULA = "=+-@\t\r\n";

    private SpreadsheetText() {}

    public static String of(String cell) {
        return !cell.isEmpty() && BEGINS_A_FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
