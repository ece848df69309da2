package org.proviso.files;

/**
 * A row of an outside list that could not be taken: the file it stands in, its line, the column (empty where the whole
 * row is meant), why, and the row as it came.
 */
public record SetAsideRow(String list, int line, String column, String reason, String asItCame) {

    /** What was wrong, with the row that it was wrong of. */
    public static SetAsideRow of(InputException wrong, String asItCame) {
        return new SetAsideRow(wrong.file(), wrong.line(), wrong.column(), wrong.reason(), asItCame);
    }
}
