package org.proviso.core.matching;

import java.util.Arrays;

/** Gathers the voters that share a pair of fields with an envelope, stage by stage, rarest pairs first. For one thread. */
final class VoterSearch {

    private static final Block[] BLOCKS = Block.values();
    private static final int MOST_VOTERS = 12_000;
    private static final int LENGTH_AT = 40;
    private static final int BLOCK_AT = 32;
    private static final int BLOCK_MASK = (1 << LENGTH_AT - BLOCK_AT) - 1;

    private final InvertedLists lists;
    private final KeyFields fields = new KeyFields();
    private final IntColumn listsOf = new IntColumn();
    private final VoterSet found = new VoterSet(MOST_VOTERS);
    private long[] spans = new long[64];
    private int spanCount;
    private boolean nearIsWhole;

    VoterSearch(InvertedLists lists) {
        this.lists = lists;
    }

    /** Takes the person to look for; no voter is gathered yet. */
    void start(Claim claim) {
        claim.fill(fields);
        found.clear();
        nearIsWhole = true;
    }

    /** Adds the voters of a stage, each once, in an order that depends on claim and roll only; stages may be left out. */
    VoterSet gather(Stage stage) {
        spanCount = 0;
        int reach = 0;
        for (Block block : BLOCKS) {
            reach += block.stage() == stage ? noteSpans(block) : 0;
        }
        Arrays.sort(spans, 0, spanCount);
        found.expect(reach);
        for (int i = 0; i < spanCount && found.size() < MOST_VOTERS; i++) {
            gather(spans[i]);
        }
        return found;
    }

    /** Whether every voter who shares a pair of the first two stages is gathered with them, so far as they were asked for. */
    boolean nearIsWhole() {
        return nearIsWhole && found.size() < MOST_VOTERS;
    }

    /** Looks up how many voters share what; gives their number. */
    private int noteSpans(Block block) {
        listsOf.empty();
        block.lists(fields, lists.slots(block), listsOf);
        int longest = block.longest(fields);
        int reach = 0;
        for (int i = 0; i < listsOf.size(); i++) {
            int start = lists.start(block, listsOf.get(i));
            int length = lists.end(block, listsOf.get(i)) - start;
            if (length > longest) {
                nearIsWhole &= block.stage().compareTo(Stage.NEAR) > 0;
            } else if (length > 0) {
                noteSpan(block, start, length);
                reach += length;
            }
        }
        return reach;
    }

    /** A span packs length, block and first place, so that sorting puts the shortest list first. */
    private void noteSpan(Block block, int start, int length) {
        if (spanCount == spans.length) {
            spans = Arrays.copyOf(spans, spanCount * 2);
        }
        spans[spanCount++] = (long) length << LENGTH_AT | (long) block.ordinal() << BLOCK_AT | start;
    }

    private void gather(long span) {
        Block block = BLOCKS[(int) (span >>> BLOCK_AT) & BLOCK_MASK];
        int start = (int) span;
        int end = start + (int) (span >>> LENGTH_AT);
        int[] voters = lists.voters(block);
        for (int place = start; place < end; place++) {
            found.add(voters[place]);
        }
    }
}
