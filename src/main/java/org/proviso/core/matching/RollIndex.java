package org.proviso.core.matching;

import java.util.List;

/**
 * The roll in memory, laid out for finding: rows of numbers, no object per voter, voters of like-sounding surnames side by
 * side. Made once by a builder, then read
 * only, by any number of threads.
 */
public final class RollIndex {

    /** Added to counts so that a small roll does not make every name look rare. */
    private static final double SMOOTHING = 1_000;

    private final TextArena ids;
    private final int[] placesOfIds;
    private final RollWords words;
    private final RollColumns columns;
    private final InvertedLists lists;

    RollIndex(TextArena ids, int[] placesOfIds, RollWords words, RollColumns columns, InvertedLists lists) {
        this.ids = ids;
        this.placesOfIds = placesOfIds;
        this.words = words;
        this.columns = columns;
        this.lists = lists;
    }

    public static RollIndexBuilder builder() {
        return new RollIndexBuilder();
    }

    /** The index over what several threads have read, in the order of the stretches' places. */
    public static RollIndex of(List<RollPortion> portions) {
        return RollJoining.of(portions);
    }

    /** How many voters the roll holds. */
    public int size() {
        return columns.size();
    }

    String voterId(int voter) {
        return ids.get(placesOfIds[voter]);
    }

    boolean idBegins(int voter, String beginning) {
        return ids.begins(placesOfIds[voter], beginning);
    }

    RollWords words() {
        return words;
    }

    RollColumns columns() {
        return columns;
    }

    InvertedLists lists() {
        return lists;
    }

    /** The share of voters for a count of them, a little above the plain one. */
    double share(int count) {
        return (count + 1) / (size() + SMOOTHING);
    }

    /** How many voters live at that house number of that street. */
    int household(int house, int streetCode) {
        int mixed = Slots.mix(house, words.streets().hash(streetCode));
        int list = lists.slots(Block.HOUSE_AND_STREET).of(mixed);
        int[] starts = lists.starts(Block.HOUSE_AND_STREET);
        return starts[list + 1] - starts[list];
    }
}
