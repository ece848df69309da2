package org.proviso.core.matching;

import java.util.concurrent.atomic.AtomicInteger;

/**
 * For each block the voters under each key: lists laid end to end, with the place where each begins. Keys share a list
 * when their numbers do, which costs a look and nothing else.
 */
final class InvertedLists {

    private static final int SMALLEST = 1 << 10;

    private final int[][] starts;
    private final int[][] voters;

    private InvertedLists() {
        starts = new int[Block.values().length][];
        voters = new int[Block.values().length][];
    }

    static InvertedLists of(RollColumns columns, RollWords words) {
        InvertedLists lists = new InvertedLists();
        AtomicInteger next = new AtomicInteger();
        Workers.run(() -> lists.fillNext(next, new VoterKeys(columns, words), columns.size()), threads());
        return lists;
    }

    /** Each block is a piece of work of its own; which thread fills it makes no difference. */
    private void fillNext(AtomicInteger next, VoterKeys keys, int count) {
        Block[] blocks = Block.values();
        for (int i = next.getAndIncrement(); i < blocks.length; i = next.getAndIncrement()) {
            fill(blocks[i], keys, count);
        }
    }

    private static int threads() {
        return Math.min(Block.values().length, Runtime.getRuntime().availableProcessors());
    }

    /** Takes down the keys and counts them, then lays the voters from the end of each list to its beginning. */
    private void fill(Block block, VoterKeys fields, int count) {
        IntColumn keys = new IntColumn();
        byte[] keysOf = new byte[count];
        for (int voter = 0; voter < count; voter++) {
            int before = keys.size();
            block.keys(fields.of(voter, block), keys);
            keysOf[voter] = (byte) (keys.size() - before);
        }
        int[] begins = new int[Math.max(SMALLEST, Integer.highestOneBit(Math.max(1, keys.size())) << 1) + 1];
        int mask = begins.length - 2;
        for (int i = 0; i < keys.size(); i++) {
            begins[keys.get(i) & mask]++;
        }
        for (int list = 1; list < begins.length; list++) {
            begins[list] += begins[list - 1];
        }
        starts[block.ordinal()] = begins;
        voters[block.ordinal()] = lay(begins, mask, keys, keysOf);
    }

    private static int[] lay(int[] begins, int mask, IntColumn keys, byte[] keysOf) {
        int[] laid = new int[keys.size()];
        int next = keys.size();
        for (int voter = keysOf.length - 1; voter >= 0; voter--) {
            for (int left = keysOf[voter]; left > 0; left--) {
                laid[--begins[keys.get(--next) & mask]] = voter;
            }
        }
        return laid;
    }

    int start(Block block, int key) {
        int[] begins = starts[block.ordinal()];
        return begins[key & begins.length - 2];
    }

    int end(Block block, int key) {
        int[] begins = starts[block.ordinal()];
        return begins[(key & begins.length - 2) + 1];
    }

    /** The voters of all lists of a block, to be read from a start to an end. */
    int[] voters(Block block) {
        return voters[block.ordinal()];
    }
}
