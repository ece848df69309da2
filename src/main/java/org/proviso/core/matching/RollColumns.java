package org.proviso.core.matching;

/**
 * The roll's fields as numbers: numbers of names and streets in their dictionaries, birth date and last four as spread
 * digits, 0 where nothing is known. One voter's numbers lie side by side, since they are read together.
 */
final class RollColumns {

    static final int WIDTH = 10;

    private static final int BYTE = 8;

    private final int[] cells;
    private final int[] former;

    /** The former surnames may be no row at all when the roll has none. */
    RollColumns(int[] cells, int[] former) {
        this.cells = cells;
        this.former = former;
    }

    /** Last four and generation mark share a cell. */
    static int packed(int last4, NameSuffix suffix) {
        return last4 << BYTE | suffix.ordinal();
    }

    int size() {
        return cells.length / WIDTH;
    }

    int surname(int voter) {
        return cells[voter * WIDTH];
    }

    int given(int voter) {
        return cells[voter * WIDTH + 1];
    }

    int middle(int voter) {
        return cells[voter * WIDTH + 2];
    }

    int birth(int voter) {
        return cells[voter * WIDTH + 3];
    }

    int house(int voter) {
        return cells[voter * WIDTH + 4];
    }

    int street(int voter) {
        return cells[voter * WIDTH + 5];
    }

    int door(int voter) {
        return cells[voter * WIDTH + 6];
    }

    int zip(int voter) {
        return cells[voter * WIDTH + 7];
    }

    int license(int voter) {
        return cells[voter * WIDTH + 8];
    }

    int last4(int voter) {
        return cells[voter * WIDTH + 9] >>> BYTE;
    }

    NameSuffix suffix(int voter) {
        return NameSuffix.at(cells[voter * WIDTH + 9] & 0xff);
    }

    /** The former surname's number, 0 where none is known. */
    int former(int voter) {
        return former.length == 0 ? 0 : former[voter];
    }
}
