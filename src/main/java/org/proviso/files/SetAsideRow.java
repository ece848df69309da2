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

    /** The same with a row as it came of no more than so many letters. */
    public SetAsideRow cutAt(int most) {
        return asItCame.length() <= most
                ? this
                : new SetAsideRow(list, line, column, reason, asItCame.substring(0, most));
    }
}
