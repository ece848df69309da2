package org.proviso.sample.county;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Surnames, given names by year of birth, and the short forms people sign with; all written by hand for this county. */
public final class NameBook {

    private static final int COMMON = 40;

    private final List<String> surnames = WordList.words("surnames.txt");
    private final NavigableMap<Integer, List<String>> women = byYear("given-women.txt");
    private final NavigableMap<Integer, List<String>> men = byYear("given-men.txt");
    private final Map<String, List<String>> nicknames = new HashMap<>();

    NameBook() {
        for (String line : WordList.lines("nicknames.txt")) {
            String[] parts = line.split(": ");
            nicknames.put(parts[0], List.of(parts[1].split(" ")));
        }
    }

    private static NavigableMap<Integer, List<String>> byYear(String list) {
        NavigableMap<Integer, List<String>> bands = new TreeMap<>();
        for (String line : WordList.lines(list)) {
            String[] parts = line.split(": ");
            bands.put(Integer.valueOf(parts[0]), List.of(parts[1].split(" ")));
        }
        return bands;
    }

    public String surname(Dice dice) {
        return dice.chance(0.3) ? surnames.get(dice.below(COMMON)) : dice.pick(surnames);
    }

    /** A given name usual about that year; one in five comes from the years before or after. */
    String given(boolean woman, int year, Dice dice) {
        int drawn = year + (dice.chance(0.2) ? dice.between(-15, 15) : 0);
        NavigableMap<Integer, List<String>> bands = woman ? women : men;
        Map.Entry<Integer, List<String>> band = bands.floorEntry(drawn);
        return dice.pick((band == null ? bands.firstEntry() : band).getValue());
    }

    /** What else a person of that given name may write, or nothing. */
    public List<String> shortForms(String given) {
        return nicknames.getOrDefault(given, List.of());
    }
}
