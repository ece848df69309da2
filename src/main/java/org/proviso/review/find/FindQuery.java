package org.proviso.review.find;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What somebody typed to find an envelope or a voter, as a number, a date, a name or an address. */
record FindQuery(String typed) {

    private static final int NUMBER_WIDTH = 6;
    private static final int MOST_WORDS = 5;
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

    /** A name as it may have been meant. */
    record Name(String last, String first) {}

    /**
     * The names that this may be. With a comma the surname stands before it. Without one it stands last or first, and it may
     * have several words: "Rosa de la Cruz", "de la Cruz Rosa".
     */
    List<Name> names() {
        int comma = typed.indexOf(',');
        if (comma >= 0) {
            return named(typed.substring(0, comma), typed.substring(comma + 1));
        }
        List<String> words = List.of(typed.split(" ", MOST_WORDS));
        List<Name> names = new ArrayList<>(words.size() == 1 ? named(typed, "") : List.of());
        for (int split = words.size() - 1; split > 0; split--) {
            String before = String.join(" ", words.subList(0, split));
            String after = String.join(" ", words.subList(split, words.size()));
            names.addAll(named(after, before));
            names.addAll(named(before, after));
        }
        return names;
    }

    /** One letter is too little to look for. */
    private static List<Name> named(String last, String first) {
        return last.strip().length() < 2 ? List.of() : List.of(new Name(capitalized(last.strip()), first.strip()));
    }

    /** As names are mostly written: what was typed in capitals too. */
    private static String capitalized(String word) {
        String plain = word.equals(word.toUpperCase(Locale.ROOT)) ? word.toLowerCase(Locale.ROOT) : word;
        return plain.isEmpty() ? plain : Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
    }
}
