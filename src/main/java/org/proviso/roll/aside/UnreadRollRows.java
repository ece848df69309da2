package org.proviso.roll.aside;

import java.util.List;
import java.util.stream.Collectors;
import org.proviso.ui.UsDates;

/**
 * Rows of the roll in use that are set aside: how many, and in which lines of its file those stand that contain every
 * word looked for (the first ones). Whoever is not found on the roll may be in one of them.
 */
public record UnreadRollRows(int rows, List<Integer> lines) {

    /** Of a roll all of whose rows were read. */
    public static final UnreadRollRows NONE = new UnreadRollRows(0, List.of());

    /** Empty where every row was read. */
    public String words() {
        if (rows == 0) {
            return "";
        }
        String all = UsDates.count(rows, "row") + " of the roll in use could not be read. ";
        if (lines.isEmpty()) {
            return all + "None of them contains these words.";
        }
        String where = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return all + "In " + (lines.size() == 1 ? "line " : "lines ") + where
                + " these words stand. This voter may be on the roll: ask a supervisor (Setup, rows set aside).";
    }
}
