package org.proviso.files.csv;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.Arrays;
import org.proviso.files.InputException;

/**
 * The cells of the row just read, as characters in one reused array. Short texts that repeat from row to row (cities,
 * streets, given names) are handed out as the same string.
 */
final class CsvCells extends AbstractBaseCsvCallbackHandler<CsvCells> {

    static final int LONGEST_RECORD = 1_000_000;

    private static final int SHARED = 1 << 14;
    private static final int SHORT = 24;

    private final String file;
    private final String[] shared = new String[SHARED];
    private char[] chars = new char[1 << 10];
    private int[] ends = new int[64];
    private boolean[] quoted = new boolean[64];
    private int count;
    private int line;

    CsvCells(String file) {
        this.file = file;
    }

    int count() {
        return count;
    }

    int line() {
        return line;
    }

    int start(int cell) {
        return cell == 0 ? 0 : ends[cell - 1];
    }

    int length(int cell) {
        return ends[cell] - start(cell);
    }

    char at(int cell, int index) {
        return chars[start(cell) + index];
    }

    /** The cell's text; a column the file does not have (-1) is empty. */
    String text(int cell) {
        int length = cell < 0 ? 0 : length(cell);
        if (length == 0) {
            return "";
        }
        int start = start(cell);
        return length <= SHORT ? shared(start, length) : new String(chars, start, length);
    }

    /** The row as it stands in the file, without the end of its line. */
    String asItCame() {
        StringBuilder row = new StringBuilder();
        for (int cell = 0; cell < count; cell++) {
            String text = new String(chars, start(cell), length(cell));
            row.append(cell == 0 ? "" : ",").append(quoted[cell] ? '"' + text.replace("\"", "\"\"") + '"' : text);
        }
        return row.toString();
    }

    /** Whether a cell has a line break in it, so that the row goes over several lines. */
    boolean isOverSeveralLines() {
        for (int i = 0; count > 0 && i < ends[count - 1]; i++) {
            if (chars[i] == '\n' || chars[i] == '\r') {
                return true;
            }
        }
        return false;
    }

    /** A hash of the cell's text, for keys: 64 bits of which a million rows share none but by rare accident. */
    long hash(int cell, long seed) {
        long hash = seed;
        for (int i = start(cell); i < ends[cell]; i++) {
            hash = (hash ^ chars[i]) * 0x9E3779B97F4A7C15L;
            hash ^= hash >>> 29;
        }
        return (hash ^ 0x1F) * 0xBF58476D1CE4E5B9L;
    }

    private String shared(int start, int length) {
        int hash = 0;
        for (int i = start; i < start + length; i++) {
            hash = 31 * hash + chars[i];
        }
        int slot = (hash ^ hash >>> 15) & SHARED - 1;
        String known = shared[slot];
        if (known != null && known.length() == length && known.hashCode() == hash && equal(known, start)) {
            return known;
        }
        String text = new String(chars, start, length);
        shared[slot] = text;
        return text;
    }

    private boolean equal(String known, int start) {
        for (int i = 0; i < known.length(); i++) {
            if (known.charAt(i) != chars[start + i]) {
                return false;
            }
        }
        return true;
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        line = Math.toIntExact(startingLineNumber);
        count = 0;
    }

    @Override
    protected void handleField(int index, char[] buffer, int offset, int length, boolean inQuotes) {
        int start = count == 0 ? 0 : ends[count - 1];
        int end = start + length;
        if (end + count > LONGEST_RECORD) {
            throw new InputException(file, line, "", UnreadableRow.TOO_LONG);
        }
        if (end > chars.length) {
            chars = Arrays.copyOf(chars, Math.max(end, 2 * chars.length));
        }
        if (count == ends.length) {
            ends = Arrays.copyOf(ends, 2 * count);
            quoted = Arrays.copyOf(quoted, 2 * count);
        }
        System.arraycopy(buffer, offset, chars, start, length);
        quoted[count] = inQuotes;
        ends[count++] = end;
    }

    @Override
    protected CsvCells buildRecord() {
        return this;
    }
}
