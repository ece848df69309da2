package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.NameSuffix;

/**
 * The roll's fields as numbers: numbers of names and streets in their dictionaries, birth date and last four as spread
 * digits, 0 where nothing is known. The numbers of one voter that are read together lie side by side.
 */
public final class RollColumns {

    /** How many numbers are read for each voter that comes near. */
    static final int WIDTH = 8;

    /** With so many places before the first row no row lies across two lines of the processor's cache. */
    private static final int BEFORE = 4;

    private static final int MORE = 2;
    private static final int BYTE = 8;

    private final int[] rows;
    private final int[] more;
    private final int[] former;

    /** Rows to be set; without former surnames on the roll none are kept. */
    RollColumns(int voters, boolean anyFormer) {
        rows = new int[BEFORE + voters * WIDTH];
        more = new int[voters * MORE];
        former = new int[anyFormer ? voters : 0];
    }

    /** Last four and generation mark share a cell. */
    static int packed(int last4, NameSuffix suffix) {
        return last4 << BYTE | suffix.ordinal();
    }

    /** Sets what is known of a voter's name. */
    void setName(int voter, int surname, int given, int middle, int formerSurname) {
        int row = BEFORE + voter * WIDTH;
        rows[row] = surname;
        rows[row + 1] = given;
        rows[row + 2] = middle;
        if (former.length > 0) {
            former[voter] = formerSurname;
        }
    }

    void setAddress(int voter, int house, int street, int door, int zip) {
        int row = BEFORE + voter * WIDTH;
        rows[row + 4] = house;
        rows[row + 5] = street;
        rows[row + 6] = zip;
        more[voter * MORE] = door;
    }

    void setNumbers(int voter, int birth, int license, int last4AndSuffix) {
        int row = BEFORE + voter * WIDTH;
        rows[row + 3] = birth;
        rows[row + 7] = last4AndSuffix;
        more[voter * MORE + 1] = license;
    }

    int size() {
        return more.length / MORE;
    }

    public int surname(int voter) {
        return rows[BEFORE + voter * WIDTH];
    }

    public int given(int voter) {
        return rows[BEFORE + voter * WIDTH + 1];
    }

    public int middle(int voter) {
        return rows[BEFORE + voter * WIDTH + 2];
    }

    public int birth(int voter) {
        return rows[BEFORE + voter * WIDTH + 3];
    }

    public int house(int voter) {
        return rows[BEFORE + voter * WIDTH + 4];
    }

    public int street(int voter) {
        return rows[BEFORE + voter * WIDTH + 5];
    }

    public int zip(int voter) {
        return rows[BEFORE + voter * WIDTH + 6];
    }

    public int last4(int voter) {
        return rows[BEFORE + voter * WIDTH + 7] >>> BYTE;
    }

    public NameSuffix suffix(int voter) {
        return NameSuffix.at(rows[BEFORE + voter * WIDTH + 7] & 0xff);
    }

    public int door(int voter) {
        return more[voter * MORE];
    }

    public int license(int voter) {
        return more[voter * MORE + 1];
    }

    /** The former surname's number, 0 where none is known. */
    public int former(int voter) {
        return former.length == 0 ? 0 : former[voter];
    }
}
