package org.proviso.core.matching;

import java.util.Arrays;

/** Gathers the voters that share a pair of fields with an envelope, rarest pairs first. For one thread. */
final class VoterSearch {

    private static final Block[] BLOCKS = Block.values();
    private static final int MOST_VOTERS = 12_000;

    private final RollIndex index;
    private final InvertedLists lists;
    private final KeyFields fields = new KeyFields();
    private final VoterSet found = new VoterSet(MOST_VOTERS);
    private long[] spans = new long[64];
    private int spanCount;
    private long reach;

    VoterSearch(RollIndex index) {
        this.index = index;
        lists = index.lists();
    }

    /** The voters, each once, in an order that depends on the claim and the roll only. */
    VoterSet find(Claim claim) {
        spanCount = 0;
        reach = 0;
        claim.fill(fields);
        for (Block block : BLOCKS) {
            int longest = block.longest(fields);
            block.keys(fields, key -> noteSpan(block, key, longest));
        }
        Arrays.sort(spans, 0, spanCount);
        found.clear((int) Math.min(MOST_VOTERS, reach));
        for (int i = 0; i < spanCount && found.size() < MOST_VOTERS; i++) {
            gather(spans[i]);
        }
        return found;
    }

    /** A span packs length, block and first place, so that sorting puts the shortest list first. */
    private void noteSpan(Block block, int key, int longest) {
        int start = lists.start(block, key);
        int length = lists.end(block, key) - start;
        if (length == 0 || length + index.around(block, key) > longest) {
            return;
        }
        if (spanCount == spans.length) {
            spans = Arrays.copyOf(spans, spanCount * 2);
        }
        reach += length;
        spans[spanCount++] = (long) length << 48 | (long) block.ordinal() << 32 | start;
    }

    private void gather(long span) {
        Block block = BLOCKS[(int) (span >>> 32) & 0xffff];
        int start = (int) span;
        int end = start + (int) (span >>> 48);
        int[] voters = lists.voters(block);
        for (int place = start; place < end && found.size() < MOST_VOTERS; place++) {
            found.add(voters[place]);
        }
    }
}
