package org.proviso.core.matching.index;

import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.core.matching.spelling.IntColumn;

/**
 * For each block the voters under each key: lists laid end to end, with the place where each begins. Keys share a list
 * when their numbers do, which costs a look and nothing else.
 */
public final class InvertedLists {

    private final ListNumbering plain;
    private final ListNumbering bySound;
    private final NearNames[] near = new NearNames[1];
    private final int[][] starts;
    private final int[][] voters;

    private InvertedLists(RollColumns columns, RollWords words) {
        plain = ListNumbering.plain(columns.size());
        bySound = ListNumbering.bySound(columns, words.surnames());
        starts = new int[BlockingKey.values().length][];
        voters = new int[BlockingKey.values().length][];
    }

    static InvertedLists of(RollColumns columns, RollWords words) {
        InvertedLists lists = new InvertedLists(columns, words);
        AtomicInteger next = new AtomicInteger();
        ParallelWork.run(() -> lists.fillNext(next, columns, words), threads());
        return lists;
    }

    /** The roll's surnames by their likeness. */
    public NearNames nearSurnames() {
        return near[0];
    }

    /** How the lists of a block are numbered. */
    public ListNumbering slots(BlockingKey block) {
        return block.isBySound() ? bySound : plain;
    }

    /** Each block, and the likeness of surnames, is a piece of work of its own; which thread fills it makes no difference. */
    private void fillNext(AtomicInteger next, RollColumns columns, RollWords words) {
        BlockingKey[] blocks = BlockingKey.values();
        VoterKeys keys = new VoterKeys(columns, words);
        for (int i = next.getAndIncrement(); i <= blocks.length; i = next.getAndIncrement()) {
            if (i == 0) {
                near[0] = new NearNames(words.surnames());
            } else {
                fill(blocks[i - 1], keys, columns.size());
            }
        }
    }

    private static int threads() {
        return Math.min(BlockingKey.values().length, Runtime.getRuntime().availableProcessors());
    }

    /** Takes down who stands on which list and counts, then lays the voters from the end of each list to its beginning. */
    private void fill(BlockingKey block, VoterKeys keys, int count) {
        ListNumbering slots = slots(block);
        IntColumn lists = new IntColumn(count + 1);
        byte[] listsOf = new byte[count];
        for (int voter = 0; voter < count; voter++) {
            int before = lists.size();
            keys.lists(voter, block, slots, lists);
            listsOf[voter] = (byte) (lists.size() - before);
        }
        int[] begins = new int[slots.size() + 1];
        for (int i = 0; i < lists.size(); i++) {
            begins[lists.get(i)]++;
        }
        for (int list = 1; list < begins.length; list++) {
            begins[list] += begins[list - 1];
        }
        starts[block.ordinal()] = begins;
        voters[block.ordinal()] = lay(begins, lists, listsOf);
    }

    private static int[] lay(int[] begins, IntColumn lists, byte[] listsOf) {
        int[] laid = new int[lists.size()];
        int next = lists.size();
        for (int voter = listsOf.length - 1; voter >= 0; voter--) {
            for (int left = listsOf[voter]; left > 0; left--) {
                laid[--begins[lists.get(--next)]] = voter;
            }
        }
        return laid;
    }

    /** Where each list of a block begins, and with the next one's beginning ends. */
    public int[] starts(BlockingKey block) {
        return starts[block.ordinal()];
    }

    /** How many voters stand on a list of a block whose pairs come mixed. */
    int length(BlockingKey block, int mixed) {
        int list = slots(block).of(mixed);
        return starts(block)[list + 1] - starts(block)[list];
    }

    /** The voters of all lists of a block, to be read from a start to an end. */
    public int[] voters(BlockingKey block) {
        return voters[block.ordinal()];
    }
}
