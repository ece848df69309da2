package org.proviso.files.csv;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.YesNo;
import org.proviso.files.InputException;

/** What a cell that is not empty may mean: dates, numbers, yes and no, fixed words. */
public final class CellParser {

    private static final String DATE = "0000-00-00";
    private static final String MINUTES = "0000-00-00T00:00";
    private static final String SECONDS = "0000-00-00T00:00:00";

    /** The spelled words of each enum, found once: a roll asks for them a million times. */
    private static final ClassValue<Map<String, Object>> WORDS = new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
            return Arrays.stream(type.getEnumConstants())
                    .collect(Collectors.toMap(constant -> ((Code) constant).code(), constant -> constant));
        }
    };

    private CellParser() {}

    static LocalDate date(CsvRow row, int column) {
        if (hasForm(row, column, DATE)) {
            try {
                return LocalDate.of(number(row, column, 0, 4), number(row, column, 5, 7), number(row, column, 8, 10));
            } catch (DateTimeException e) {
                // A month 13 or a February 30: refused below with every other mistake.
            }
        }
        throw wrong(row, column, "is not a date (write it as 1990-12-31)");
    }

    static LocalDateTime dateTime(CsvRow row, int column) {
        if (hasForm(row, column, MINUTES) || hasForm(row, column, SECONDS)) {
            try {
                return LocalDateTime.parse(row.text(column));
            } catch (DateTimeException e) {
                // An hour 25 and the like: refused below with every other mistake.
            }
        }
        throw wrong(row, column, "is not a local date and time (write it as 2026-11-03T18:52)");
    }

    static int whole(CsvRow row, int column) {
        String text = row.text(column);
        if (text.length() <= 9 && text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return Integer.parseInt(text);
        }
        throw wrong(row, column, "is not a whole number (digits only, at most nine)");
    }

    static YesNo yesNo(CsvRow row, int column) {
        String text = row.text(column);
        if (text.equals("yes")) {
            return YesNo.YES;
        }
        if (text.equals("no")) {
            return YesNo.NO;
        }
        throw wrong(row, column, "is not yes or no (leave it empty if unknown)");
    }

    static <E extends Enum<E> & Code> E code(CsvRow row, int column, String text, Class<E> type) {
        Object constant = WORDS.get(type).get(text);
        if (constant == null) {
            throw row.wrong(column, InputException.quoted(text) + " is not one of " + allowed(type));
        }
        return type.cast(constant);
    }

    static Set<String> words(CsvRow row, int column) {
        if (row.isEmpty(column)) {
            return Set.of();
        }
        Set<String> words = new LinkedHashSet<>();
        for (String word : row.text(column).split(";", -1)) {
            if (word.isBlank() || !word.equals(word.strip()) || !words.add(word)) {
                throw wrong(
                        row,
                        column,
                        "is not a list (separate words with ;, with no empty words, repeats or extra spaces)");
            }
        }
        return Collections.unmodifiableSet(words);
    }

    public static <E extends Enum<E> & Code> String allowed(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Code::code).collect(Collectors.joining(", "));
    }

    private static boolean hasForm(CsvRow row, int column, String form) {
        boolean fits = row.length(column) == form.length();
        for (int i = 0; fits && i < form.length(); i++) {
            char c = row.at(column, i);
            fits = form.charAt(i) == '0' ? c >= '0' && c <= '9' : c == form.charAt(i);
        }
        return fits;
    }

    private static int number(CsvRow row, int column, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            number = 10 * number + row.at(column, i) - '0';
        }
        return number;
    }

    private static InputException wrong(CsvRow row, int column, String reason) {
        return row.wrong(column, InputException.quoted(row.text(column)) + " " + reason);
    }
}
