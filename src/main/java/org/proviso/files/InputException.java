package org.proviso.files;

/**
 * A file that cannot be taken as it stands: which one, where in it, and why. Nothing of the file has been loaded. The
 * message is one line; the line is 0 where the whole file is meant, the column (in YAML and JSON the key) may be empty.
 */
public final class InputException extends RuntimeException {

    private static final int SHOWN = 60;

    private final String file;
    private final int line;
    private final String column;
    private final String reason;

    public InputException(String file, int line, String column, String reason) {
        this("column", file, line, column, reason);
    }

    private InputException(String word, String file, int line, String column, String reason) {
        super(place(word, file, line, column) + ": " + reason);
        this.file = file;
        this.line = line;
        this.column = column;
        this.reason = reason;
    }

    /** In a file of keys and values (YAML, JSON): the key stands where a CSV file has its column. */
    public static InputException atKey(String file, int line, String key, String reason) {
        return new InputException("key", file, line, key, reason);
    }

    public String file() {
        return file;
    }

    /** The line of the file, counted from 1; of a record over several lines the first; 0 for the whole file. */
    public int line() {
        return line;
    }

    public String column() {
        return column;
    }

    public String reason() {
        return reason;
    }

    /** A value as a message shows it: in quotes, on one line, cut where it is long. */
    public static String quoted(String value) {
        String cut = value.length() <= SHOWN ? value : value.substring(0, SHOWN) + "...";
        return '"' + cut.replaceAll("\\p{Cntrl}", "?") + '"';
    }

    private static String place(String word, String file, int line, String column) {
        String inColumn = column.isEmpty() ? "" : (line > 0 ? ", " : " ") + word + " " + column;
        return file + (line > 0 ? " line " + line : "") + inColumn;
    }
}
