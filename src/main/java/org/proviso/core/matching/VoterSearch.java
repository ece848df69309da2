package org.proviso.core.matching;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.index.BaseRoll;
import org.proviso.core.matching.index.BlockingKey;
import org.proviso.core.matching.index.InvertedLists;
import org.proviso.core.matching.index.KeyFields;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.SearchStage;
import org.proviso.core.matching.index.VoterSet;
import org.proviso.core.matching.spelling.IntColumn;

/** Gathers the voters that share a pair of fields with an envelope, stage by stage, rarest pairs first. For one thread. */
final class VoterSearch {

    private static final BlockingKey[] BLOCKS = BlockingKey.values();
    private static final int MOST_VOTERS = 12_000;
    private static final int LENGTH_AT = 40;
    private static final int BLOCK_AT = 32;
    private static final int BLOCK_MASK = (1 << (LENGTH_AT - BLOCK_AT)) - 1;

    private final InvertedLists lists;
    private final @Nullable BaseRoll surroundings;
    private final IntColumn around = new IntColumn();
    private final KeyFields fields = new KeyFields();
    private final IntColumn listsOf = new IntColumn();
    private final VoterSet found = new VoterSet(MOST_VOTERS);
    private BlockingKey[] blocks = new BlockingKey[64];
    private int[] places = new int[128];
    private long[] spans = new long[64];
    private int count;
    private int spanCount;
    /** Read by nobody: it keeps what {@link #fetch} touches from being taken for nothing. */
    @SuppressWarnings("UnusedVariable")
    private int fetched;

    private boolean nearIsWhole;

    VoterSearch(RollIndex index) {
        surroundings = index.surroundings();
        lists = index.lists();
    }

    /** Takes the person to look for; no voter is gathered yet. */
    void start(EnvelopePerson claim) {
        claim.fill(fields);
        found.clear();
        nearIsWhole = true;
    }

    /** Adds the voters of a stage, each once, in an order that depends on claim and roll only; stages may be left out. */
    VoterSet gather(SearchStage stage) {
        count = 0;
        listsOf.empty();
        around.empty();
        for (BlockingKey block : BlockingKey.of(stage)) {
            block.lists(fields, lists.slots(block), listsOf);
            note(block);
            if (surroundings != null) {
                surroundings.lengths(fields, block, around);
            }
        }
        found.expect(lookUp(stage));
        Arrays.sort(spans, 0, spanCount);
        fetch();
        for (int i = 0; i < spanCount && found.size() < MOST_VOTERS; i++) {
            gather(spans[i]);
        }
        return found;
    }

    /** From now on the surname's sounds are these; false when they are none. */
    boolean respell(IntColumn sounds) {
        fields.surnameSounds.clear();
        for (int i = 0; i < sounds.size(); i++) {
            fields.surnameSounds.add(sounds.get(i));
        }
        return fields.surnameSounds.size() > 0;
    }

    /** Whether every voter who shares a pair of the first two stages is gathered with them, so far as they were asked for. */
    boolean nearIsWhole() {
        return nearIsWhole && found.size() < MOST_VOTERS;
    }

    private void note(BlockingKey block) {
        if (blocks.length < listsOf.size()) {
            blocks = Arrays.copyOf(blocks, 2 * listsOf.size());
            places = Arrays.copyOf(places, 2 * blocks.length);
            spans = Arrays.copyOf(spans, blocks.length);
        }
        while (count < listsOf.size()) {
            blocks[count++] = block;
        }
    }

    /**
     * Looks up how many voters share what, and gives their number. Lists lie scattered in memory: reading the places of all in
     * one go lets the waits overlap.
     */
    private int lookUp(SearchStage stage) {
        for (int i = 0; i < count; i++) {
            int[] starts = lists.starts(blocks[i]);
            int list = listsOf.get(i);
            places[2 * i] = starts[list];
            places[2 * i + 1] = starts[list + 1];
        }
        spanCount = 0;
        int reach = 0;
        for (int i = 0; i < count; i++) {
            int length = places[2 * i + 1] - places[2 * i];
            int others = surroundings == null ? 0 : around.get(i);
            if (length + others > blocks[i].longest(fields)) {
                nearIsWhole &= stage.compareTo(SearchStage.NEAR) > 0;
            } else if (length > 0) {
                spans[spanCount++] = span(length, blocks[i], places[2 * i]);
                reach += length;
            }
        }
        return reach;
    }

    /** A span packs length, block and first place, so that sorting puts the shortest list first. */
    private static long span(int length, BlockingKey block, int start) {
        return (long) length << LENGTH_AT | (long) block.ordinal() << BLOCK_AT | start;
    }

    /** Touches the beginning of every list, for the same reason. */
    private void fetch() {
        int sum = 0;
        for (int i = 0; i < spanCount; i++) {
            sum += voters(spans[i])[(int) spans[i]];
        }
        fetched = sum;
    }

    private int[] voters(long span) {
        return lists.voters(BLOCKS[(int) (span >>> BLOCK_AT) & BLOCK_MASK]);
    }

    private void gather(long span) {
        int start = (int) span;
        int end = start + (int) (span >>> LENGTH_AT);
        int[] voters = voters(span);
        for (int place = start; place < end; place++) {
            found.add(voters[place]);
        }
    }
}
