package org.proviso.core.matching.index;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VoterId;
import org.proviso.core.matching.spelling.TextArena;

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
    private final @Nullable BaseRoll surroundings;

    /** One of a few voters of a roll has surroundings, by whose size and homes they are weighed; its words hold their counts. */
    RollIndex(
            TextArena ids,
            int[] placesOfIds,
            RollWords words,
            RollColumns columns,
            InvertedLists lists,
            @Nullable BaseRoll surroundings) {
        this.surroundings = surroundings;
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

    /** How many voters the index holds. */
    public int size() {
        return columns.size();
    }

    /** How many voters the whole roll holds. */
    public int voters() {
        return surroundings == null ? size() : surroundings.index().size();
    }

    /** The places of voters by their numbers. */
    BitSet placesOf(Set<VoterId> voterIds) {
        BitSet places = new BitSet(size());
        for (int voter = 0; voter < size(); voter++) {
            if (voterIds.contains(voterId(voter))) {
                places.set(voter);
            }
        }
        return places;
    }

    @Nullable
    public BaseRoll surroundings() {
        return surroundings;
    }

    public VoterId voterId(int voter) {
        return new VoterId(ids.get(placesOfIds[voter]));
    }

    /** Whether a voter's number begins so, found for all in the order in which the numbers lie. */
    IntPredicate idBegins(String beginning) {
        BitSet begins = new BitSet(size());
        for (int place = 0; place < size(); place++) {
            if (ids.begins(place, beginning)) {
                begins.set(place);
            }
        }
        return voter -> begins.get(placesOfIds[voter]);
    }

    public RollWords words() {
        return words;
    }

    public RollColumns columns() {
        return columns;
    }

    public InvertedLists lists() {
        return lists;
    }

    /** The share of voters for a count of them, a little above the plain one. */
    double share(int count) {
        return (count + 1) / (voters() + SMOOTHING);
    }

    /** How many voters live at that house number of that street. */
    public int household(int house, int streetCode) {
        int mixed = ListNumbering.mix(house, words.streets().hash(streetCode));
        return lists.length(BlockingKey.HOUSE_AND_STREET, mixed)
                + (surroundings == null ? 0 : surroundings.household(mixed));
    }
}
