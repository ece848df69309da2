package org.proviso.core.matching.spelling;

import java.nio.charset.StandardCharsets;

/**
 * One roll record as the bytes of its file, in UTF-8, with the places of the cells that the index needs. One object is
 * filled again for each record.
 */
public final class RollLine {

    /** The cells, by the column's name in lower case. */
    public enum Cell {
        VOTER_ID,
        LAST_NAME,
        FIRST_NAME,
        MIDDLE_NAME,
        SUFFIX,
        FORMER_NAME,
        DATE_OF_BIRTH,
        HOUSE_NUMBER,
        STREET,
        UNIT,
        ZIP,
        ID_LAST4,
        DRIVERS_LICENSE
    }

    private static final int CELLS = Cell.values().length;

    private final int[] starts = new int[CELLS];
    private final int[] ends = new int[CELLS];
    private byte[] bytes = new byte[0];

    /** The bytes that the places of the next cells mean. */
    public void in(byte[] buffer) {
        bytes = buffer;
    }

    /** Puts a cell's first place and the one after its last; a cell that is not put is empty. */
    public void put(Cell cell, int start, int end) {
        starts[cell.ordinal()] = start;
        ends[cell.ordinal()] = end;
    }

    public byte[] bytes() {
        return bytes;
    }

    public int start(Cell cell) {
        return starts[cell.ordinal()];
    }

    public int end(Cell cell) {
        return ends[cell.ordinal()];
    }

    int length(Cell cell) {
        return ends[cell.ordinal()] - starts[cell.ordinal()];
    }

    public boolean isEmpty(Cell cell) {
        return length(cell) == 0;
    }

    public String text(Cell cell) {
        return new String(bytes, start(cell), length(cell), StandardCharsets.UTF_8);
    }
}
