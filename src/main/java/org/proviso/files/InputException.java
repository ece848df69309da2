package org.proviso.files;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

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
    private final List<InputException> others;
    private final long untold;

    public InputException(String file, int line, String column, String reason) {
        this("column", file, line, column, reason);
    }

    private InputException(String message, InputException first, List<InputException> others, long untold) {
        super(message);
        this.file = first.file;
        this.line = first.line;
        this.column = first.column;
        this.reason = first.reason;
        this.others = others;
        this.untold = untold;
    }

    /**
     * One exception for several bad places: it stands for the first and tells of the others. {@code untold} are bad too
     * and too many to be told of.
     */
    public static InputException ofAll(InputException first, List<InputException> others, long untold) {
        if (others.isEmpty() && untold == 0) {
            return first;
        }
        String also = others.stream().map(other -> other.told(first.file)).collect(Collectors.joining("; "));
        String rest = untold == 0 ? "" : "; and " + untold + " more";
        long count = 1 + others.size() + untold;
        return new InputException(
                first.getMessage() + ". " + count + " rows have errors in all; also " + also + rest,
                first,
                List.copyOf(others),
                untold);
    }

    /** This and what is bad in another file. */
    public InputException and(InputException other) {
        List<InputException> both = new ArrayList<>(others);
        both.addAll(other.all());
        return ofAll(all().get(0), both, untold + other.untold);
    }

    private InputException(String word, String file, int line, String column, String reason) {
        super(place(word, file, line, column) + ": " + reason);
        this.file = file;
        this.line = line;
        this.column = column;
        this.reason = reason;
        this.others = List.of();
        this.untold = 0;
    }

    /** In a file of keys and values (YAML, JSON): the key stands where a CSV file has its column. */
    public static InputException atKey(String file, int line, String key, String reason) {
        return new InputException("key", file, line, key, reason);
    }

    /** Each error separately, this one first. */
    public List<InputException> all() {
        List<InputException> all = new ArrayList<>();
        all.add(others.isEmpty() && untold == 0 ? this : new InputException(file, line, column, reason));
        all.addAll(others);
        return all;
    }

    /** How many more errors there are than {@link #all()} lists. */
    public long untold() {
        return untold;
    }

    private String told(String firstFile) {
        String inFile = file.equals(firstFile) ? "" : file + " ";
        String inColumn = column.isEmpty() ? "" : ", column " + column;
        return inFile + (line > 0 ? "line " + line : "") + inColumn + ": " + reason;
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
