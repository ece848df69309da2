package org.proviso.files.mapping;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What stands in one column of an office's file: in how many rows something does, the different values with their counts
 * (none where they are too many to be codes), and the first texts. {@code dateForms} are the forms that nearly all of
 * these have, the likeliest first; more than one means that the column alone does not say.
 */
public record ColumnProfile(
        String name, long filled, Map<String, Long> values, List<String> texts, List<DateForm> dateForms) {

    private static final Set<String> NOTHING =
            Set.of("NULL", "null", "(null)", "\\N", "00000000", "00/00/0000", "0000-00-00", "00-00-0000", "00/00/00");

    /** Nearly all: an export has its slips, and they are what a person must see afterwards. */
    private static final double NEARLY = 0.9;

    /** Of so few texts one may be a slip. */
    private static final int FEW = 4;

    /** Whether a text means that nothing is there, as databases write it. */
    static boolean meansNothing(String text) {
        return NOTHING.contains(text);
    }

    /** Whether nearly all texts are so; a column without any is nothing. */
    boolean nearlyAll(Predicate<String> so) {
        List<String> real = texts.stream().filter(text -> !meansNothing(text)).toList();
        int others = real.size() - (int) real.stream().filter(so).count();
        return !real.isEmpty() && (others <= (1 - NEARLY) * real.size() || (others == 1 && real.size() >= FEW));
    }

    boolean isOf(TextShape shape) {
        return nearlyAll(text -> shape.split(text).isPresent());
    }

    boolean isNumbered() {
        Set<String> different = new HashSet<>(texts);
        return different.size() == texts.size() && nearlyAll(text -> text.matches("[A-Za-z]{0,4}[-]?\\d{4,12}"));
    }

    /** The likeliest form, with a time of day or without. */
    Optional<DateForm> dateForm() {
        return dateForms.stream().findFirst();
    }

    /** The year in the middle of the column's dates; births come before registrations. */
    int middleYear() {
        List<Integer> years = dateForm().stream()
                .flatMap(form -> texts.stream().flatMap(text -> form.date(text).stream()))
                .map(date -> Integer.valueOf(date.substring(0, 4)))
                .sorted()
                .toList();
        return years.isEmpty() ? 0 : years.get(years.size() / 2);
    }
}
