package org.proviso.files.csv;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.proviso.files.InputException;

/** All rows of one file with the lines they stand in, so that a check between files can still say where. */
public record NumberedRows<T>(String file, List<T> values, LineNumbers lines) {

    public NumberedRows {
        values = Collections.unmodifiableList(values);
    }

    /** The line in which the row with that number (from 0) starts. */
    public int line(int index) {
        return lines.at(index);
    }

    /** The exception for what is wrong with one of the rows. */
    public InputException wrong(int index, String column, String reason) {
        return new InputException(file, line(index), column, reason);
    }

    /** Line numbers, packed. */
    public static final class LineNumbers {

        private int[] numbers = new int[16];
        private int size;

        void add(int line) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
            }
            numbers[size++] = line;
        }

        int at(int index) {
            return numbers[index];
        }
    }
}
