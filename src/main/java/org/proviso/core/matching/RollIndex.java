package org.proviso.core.matching;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The roll in memory, laid out for finding: rows of numbers, no object per voter. Made once by a builder, then read
 * only, by any number of threads.
 */
public final class RollIndex {

    /** Added to counts so that a small roll does not make every name look rare. */
    private static final double SMOOTHING = 1_000;

    private final TextArena ids;
    private final RollWords words;
    private final RollColumns columns;
    private final InvertedLists lists;
    private final @Nullable Surroundings surroundings;

    RollIndex(TextArena ids, RollWords words, RollColumns columns, InvertedLists lists) {
        this(ids, words, columns, lists, null);
    }

    /** An index of a few voters of a roll, by whose size and homes they are weighed; the words hold its counts. */
    RollIndex(
            TextArena ids,
            RollWords words,
            RollColumns columns,
            InvertedLists lists,
            @Nullable Surroundings surroundings) {
        this.surroundings = surroundings;
        this.ids = ids;
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

    /** How many voters the index holds. */
    public int size() {
        return columns.size();
    }

    /** How many voters the whole roll holds. */
    int voters() {
        return surroundings == null ? size() : surroundings.index().size();
    }

    /** The places of voters by their numbers. */
    BitSet placesOf(Set<String> voterIds) {
        BitSet places = new BitSet(size());
        for (int voter = 0; voter < size(); voter++) {
            if (voterIds.contains(ids.get(voter))) {
                places.set(voter);
            }
        }
        return places;
    }

    String voterId(int voter) {
        return ids.get(voter);
    }

    boolean idBegins(int voter, String beginning) {
        return ids.begins(voter, beginning);
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
        return (count + 1) / (voters() + SMOOTHING);
    }

    /** How many voters live at that house number of that street. */
    int household(int house, int streetCode) {
        int key = Block.mix(house, words.streets().hash(streetCode));
        return lists.end(Block.HOUSE_AND_STREET, key)
                - lists.start(Block.HOUSE_AND_STREET, key)
                + around(Block.HOUSE_AND_STREET, key);
    }

    /** How many voters of the roll around stand in that list. */
    int around(Block block, int key) {
        return surroundings == null ? 0 : surroundings.length(block, key);
    }
}
