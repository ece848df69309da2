package org.proviso.files.table;

import java.util.regex.Pattern;

/**
 * A column of a list, named as on its page. The cells of a column of figures are numbers in a spreadsheet where they are
 * written as one ({@code 1,204}); every other column is text, so that an envelope number keeps its zeros.
 */
public record TableColumn(String heading, boolean figures) {

    private static final Pattern NUMBER = Pattern.compile("-?(\\d{1,15}|\\d{1,3}(,\\d{3}){1,4})");

    public static TableColumn text(String heading) {
        return new TableColumn(heading, false);
    }

    public static TableColumn figures(String heading) {
        return new TableColumn(heading, true);
    }

    boolean isNumber(String cell) {
        return figures && NUMBER.matcher(cell).matches();
    }

    /** The digits of a cell that {@link #isNumber}, without the commas between thousands. */
    static String digits(String cell) {
        return cell.replace(",", "");
    }
}
