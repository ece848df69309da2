package org.proviso.review.find;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What somebody typed to find an envelope or a voter, as a number, a date, a name or an address. */
record FindQuery(String typed) {

    private static final int NUMBER_WIDTH = 6;
    private static final List<DateTimeFormatter> DATES =
            List.of(DateTimeFormatter.ofPattern("M/d/uuuu", Locale.US), DateTimeFormatter.ISO_LOCAL_DATE);

    static FindQuery of(String typed) {
        return new FindQuery(typed.strip().replaceAll("\\s+", " "));
    }

    boolean hasDigits() {
        return typed.chars().anyMatch(Character::isDigit);
    }

    /** A house number and a street: digits first, then words. */
    boolean isAddress() {
        int space = typed.indexOf(' ');
        return space > 0
                && Character.isDigit(typed.charAt(0))
                && typed.substring(space).chars().anyMatch(Character::isLetter);
    }

    /** An envelope number as typed, and with the zeros that are left out when it is said aloud. */
    List<String> numbers() {
        boolean digits = !typed.isEmpty() && typed.chars().allMatch(Character::isDigit);
        return digits && typed.length() < NUMBER_WIDTH
                ? List.of(typed, "0".repeat(NUMBER_WIDTH - typed.length()) + typed)
                : List.of(typed);
    }

    Optional<LocalDate> date() {
        return DATES.stream().flatMap(this::parsed).findFirst();
    }

    private Stream<LocalDate> parsed(DateTimeFormatter format) {
        try {
            return Stream.of(LocalDate.parse(typed, format));
        } catch (DateTimeParseException e) {
            return Stream.empty();
        }
    }

    /** The surname: before the comma, or the last word. */
    String last() {
        int comma = typed.indexOf(',');
        String last = comma >= 0 ? typed.substring(0, comma) : typed.substring(typed.lastIndexOf(' ') + 1);
        return capitalized(last.strip());
    }

    /** The given name: after the comma, or all but the last word. */
    String first() {
        int comma = typed.indexOf(',');
        int space = typed.lastIndexOf(' ');
        return comma >= 0
                ? typed.substring(comma + 1).strip()
                : space < 0 ? "" : typed.substring(0, space).strip();
    }

    private static String capitalized(String word) {
        return word.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
