package org.proviso.files.mapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gathers what stands in one column while a file goes by. */
final class ProfileBuilder {

    /** With more different values a column is no column of codes. */
    private static final int CODES = 40;

    private static final int TEXTS = 500;
    private static final int EARLIEST_YEAR = 1880;
    private static final int LATEST_YEAR = 2100;

    private final String name;
    private final Map<String, Long> values = new TreeMap<>();
    private final List<String> texts = new ArrayList<>();
    private long filled;
    private boolean many;
    private final boolean named;

    ProfileBuilder(String name) {
        this.name = name;
        this.named = OurField.plain(name).matches(".*(date|dob|birth|dt).*");
    }

    void add(String text) {
        if (text.isEmpty()) {
            return;
        }
        filled++;
        if (texts.size() < TEXTS) {
            texts.add(text);
        }
        if (!many) {
            values.merge(text, 1L, Long::sum);
            many = values.size() > CODES;
        }
    }

    ColumnProfile built(List<DateForm> known) {
        Map<String, Long> codes = many ? Map.of() : new LinkedHashMap<>(values);
        ColumnProfile plain = new ColumnProfile(name, filled, codes, List.copyOf(texts), List.of());
        boolean mayBeDates = plain.nearlyAll(ProfileBuilder::hasDigits);
        List<DateForm> forms = !mayBeDates
                ? List.of()
                : known.stream()
                        .filter(form -> plain.nearlyAll(text -> isDate(form, text)))
                        .sorted(Comparator.comparingLong(this::fitting).reversed())
                        .toList();
        return new ColumnProfile(name, filled, codes, plain.texts(), forms);
    }

    /** Every date has at least a day and a year in digits. */
    private static boolean hasDigits(String text) {
        return text.chars().filter(Character::isDigit).count() > 2;
    }

    private long fitting(DateForm form) {
        return texts.stream().filter(text -> isDate(form, text)).count();
    }

    /** Six digits alone are any number; eight are a date only where the year can be one. */
    private boolean isDate(DateForm form, String text) {
        boolean isOnlyDigits = text.chars().allMatch(Character::isDigit);
        return (named || !isOnlyDigits || text.length() > 6)
                && form.date(text)
                        .map(date -> Integer.parseInt(date.substring(0, 4)))
                        .filter(year -> year >= EARLIEST_YEAR && year <= LATEST_YEAR)
                        .isPresent();
    }
}
