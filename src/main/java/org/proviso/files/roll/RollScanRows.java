package org.proviso.files.roll;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.index.RollPortion;
import org.proviso.core.matching.spelling.RollLine;
import org.proviso.files.csv.LongColumn;

/** Reads the rows that begin within a stretch of a roll. For one thread: it has one buffer. */
final class RollScanRows {

    private static final int BEYOND = 1 << 16;
    private static final int MANY = 1 << 20;
    private static final int REFUSED = -1;

    private final RollLine.@Nullable Cell[] cells;
    private final FileChannel channel;
    private final long size;
    private final RollPortion portion;
    private final LongColumn ids;
    private final RollLine line = new RollLine();
    private final byte[] bytes;
    private int filled;
    private int idStart;
    private int idEnd;
    private int cellStart;
    private int cellEnd;
    private boolean foreign;

    RollScanRows(
            RollScanColumns columns, FileChannel channel, long size, int stretch, RollPortion portion, LongColumn ids) {
        cells = columns.cells();
        this.channel = channel;
        this.size = size;
        this.portion = portion;
        this.ids = ids;
        bytes = new byte[stretch + BEYOND + 2];
        line.in(bytes);
    }

    /** Takes the rows that begin from a place to before another; false at the first that is not plain. */
    boolean read(long from, long to) throws IOException {
        portion.begin(from);
        fill(from - 1);
        int stop = 1 + (int) (to - from);
        int row = firstRow();
        while (row < stop && row < filled) {
            row = isBlank(row) ? afterBlank(row) : row(row);
            if (row == REFUSED) {
                return false;
            }
        }
        return true;
    }

    private void fill(long from) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes, 0, bytes.length - 1);
        long place = from;
        while (buffer.hasRemaining()) {
            int count = channel.read(buffer, place);
            if (count < 0) {
                break;
            }
            place += count;
        }
        filled = buffer.position();
        if (from + filled == size && filled > 0 && bytes[filled - 1] != '\n') {
            bytes[filled++] = '\n';
        }
    }

    /** The buffer begins one byte before the stretch: a row begins after a line's end. */
    private int firstRow() {
        int at = 0;
        while (at < filled && bytes[at] != '\n') {
            at++;
        }
        return at + 1;
    }

    private boolean isBlank(int row) {
        return bytes[row] == '\n' || (bytes[row] == '\r' && row + 1 < filled && bytes[row + 1] == '\n');
    }

    private int afterBlank(int row) {
        return bytes[row] == '\n' ? row + 1 : row + 2;
    }

    /** Takes one row and gives the place of the next, or {@link #REFUSED}. */
    private int row(int start) {
        foreign = false;
        int next = start;
        for (int column = 0; column < cells.length; column++) {
            next = bytes[next] == '"' ? quoted(next) : bare(next);
            if (next == REFUSED || (bytes[next - 1] == '\n') != (column == cells.length - 1)) {
                return REFUSED;
            }
            RollLine.Cell cell = cells[column];
            if (cell != null) {
                line.put(cell, cellStart, cellEnd);
                if (cell == RollLine.Cell.VOTER_ID) {
                    idStart = cellStart;
                    idEnd = cellEnd;
                }
            }
        }
        return isGood(start, next) && portion.add(line) ? next : REFUSED;
    }

    /** A cell without quotes: gives the place after the comma or line end that closes it. */
    private int bare(int start) {
        for (int i = start; i < filled; i++) {
            int letter = bytes[i];
            if (letter > ',') {
                continue;
            }
            if (letter == ',' || letter == '\n') {
                return close(start, i, i + 1);
            }
            foreign |= letter < 0;
            if (letter == '"' || letter == 0 || letter == '\r') {
                return letter == '\r' && i + 1 < filled && bytes[i + 1] == '\n' ? close(start, i, i + 2) : REFUSED;
            }
        }
        return REFUSED;
    }

    /** A cell in quotes; a quote written twice is one, and what follows it moves up. */
    private int quoted(int start) {
        int to = start + 1;
        for (int i = start + 1; i + 1 < filled; i++) {
            int letter = bytes[i];
            foreign |= letter < 0;
            if (letter == '\n' || letter == '\r' || letter == 0) {
                return REFUSED;
            }
            if (letter == '"') {
                int next = bytes[i + 1];
                if (next == ',' || next == '\n') {
                    return close(start + 1, to, i + 2);
                }
                if (next == '\r' && i + 2 < filled && bytes[i + 2] == '\n') {
                    return close(start + 1, to, i + 3);
                }
                if (next != '"') {
                    return REFUSED;
                }
                i++;
            }
            bytes[to++] = (byte) letter;
        }
        return REFUSED;
    }

    private int close(int start, int end, int next) {
        cellStart = start;
        cellEnd = end;
        return next;
    }

    /** The voter's number is there, with no space around it; what is not ASCII is UTF-8. */
    private boolean isGood(int start, int next) {
        boolean spaced = idEnd == idStart || isSpace(bytes[idStart]) || isSpace(bytes[idEnd - 1]);
        if (spaced || (foreign && !isUtf8(start, next)) || next - start > MANY) {
            return false;
        }
        long hash = 0;
        for (int i = idStart; i < idEnd; i++) {
            hash = (hash ^ bytes[i]) * 0x9E3779B97F4A7C15L;
            hash ^= hash >>> 29;
        }
        ids.add(hash * 0xBF58476D1CE4E5B9L);
        return true;
    }

    private static boolean isSpace(byte letter) {
        return letter >= 0 && letter <= ' ';
    }

    private boolean isUtf8(int start, int next) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Arrays.copyOfRange(bytes, start, next)));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
