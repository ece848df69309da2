package org.proviso.files.csv;

import java.util.Arrays;
import java.util.List;
import org.proviso.files.InputException;

/**
 * Finds two rows with the same key without keeping the keys: a hash and a line for each, and a second look into the
 * file where two hashes agree.
 */
final class UniqueKey {

    /** After so many doubles that were looked up, two hashes that agree are believed: each look reads the file again. */
    private static final int LOOKED_UP = 10;

    private final String file;
    private final List<String> columns;
    private final int[] places;
    private final CsvRow row;
    private final SecondLook secondLook;
    private long[] hashes = new long[64];
    private int[] lines = new int[64];
    private int size;
    private int doubles;

    UniqueKey(String file, List<String> columns, CsvRow row, SecondLook secondLook) {
        this.file = file;
        this.row = row;
        this.columns = columns.stream().filter(name -> row.index(name) >= 0).toList();
        this.places = this.columns.stream().mapToInt(row::index).toArray();
        this.secondLook = secondLook;
    }

    /** Takes the row's key, or says which earlier line has it. */
    void check() {
        if (Arrays.stream(places).allMatch(row::isEmpty)) {
            return;
        }
        if (2 * size >= lines.length) {
            grow();
        }
        long hash = hash();
        int slot = slot(hash);
        while (lines[slot] != 0) {
            if (hashes[slot] == hash) {
                compare(lines[slot]);
            }
            slot = slot + 1 & lines.length - 1;
        }
        hashes[slot] = hash;
        lines[slot] = row.line();
        size++;
    }

    private void compare(int earlier) {
        List<String> mine = columns.stream().map(row::text).toList();
        if (doubles >= LOOKED_UP || mine.equals(secondLook.keyAt(earlier, columns))) {
            doubles++;
            String shown = InputException.quoted(String.join(" ", mine).strip());
            String both = "lines " + earlier + " and " + row.line();
            throw new InputException(
                    file, row.line(), String.join(" + ", columns), shown + " appears twice, in " + both);
        }
    }

    private long hash() {
        long hash = 0;
        for (int place : places) {
            hash = row.hash(place, hash);
        }
        return hash ^ hash >>> 32;
    }

    private int slot(long hash) {
        return (int) hash & lines.length - 1;
    }

    private void grow() {
        long[] oldHashes = hashes;
        int[] oldLines = lines;
        hashes = new long[2 * oldHashes.length];
        lines = new int[2 * oldLines.length];
        for (int i = 0; i < oldLines.length; i++) {
            if (oldLines[i] != 0) {
                int slot = slot(oldHashes[i]);
                while (lines[slot] != 0) {
                    slot = slot + 1 & lines.length - 1;
                }
                hashes[slot] = oldHashes[i];
                lines[slot] = oldLines[i];
            }
        }
    }

    /** The key in the row that starts at a line, read from the file once more. */
    interface SecondLook {
        List<String> keyAt(int line, List<String> columns);
    }
}
