package org.proviso.core.matching;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tells which envelopes a few voters may concern: those that share a pair of fields with one of their records, older or
 * newer. Any other envelope comes out of the match as before. Not thread-safe.
 */
public final class NearVoters {

    private static final Block[] BLOCKS = Block.values();

    private final RollIndexBuilder records = RollIndex.builder();
    private long[] pairs = new long[64];
    private int count;

    public void add(RollChange change) {
        if (!change.readsAlike()) {
            add(change.before());
            add(change.after());
        }
    }

    public void add(@Nullable RollEntry record) {
        if (record != null) {
            records.add(record);
        }
    }

    /** The envelopes near any of them, in the order given; no voter may be added any more. */
    public List<MatchQuery> among(List<MatchQuery> envelopes) {
        RollIndex index = records.build();
        VoterKeys keys = new VoterKeys(index.columns(), index.words());
        for (int voter = 0; voter < index.size(); voter++) {
            for (Block block : BLOCKS) {
                block.keys(keys.of(voter, block), key -> note(pair(block, key)));
            }
        }
        Arrays.sort(pairs, 0, count);
        KeyFields fields = new KeyFields();
        return envelopes.stream()
                .filter(envelope -> isNear(Claim.of(envelope), fields))
                .toList();
    }

    private void note(long pair) {
        if (count == pairs.length) {
            pairs = Arrays.copyOf(pairs, count * 2);
        }
        pairs[count++] = pair;
    }

    private boolean isNear(Claim claim, KeyFields fields) {
        boolean[] near = new boolean[1];
        claim.fill(fields);
        for (Block block : BLOCKS) {
            block.keys(fields, key -> near[0] |= Arrays.binarySearch(pairs, 0, count, pair(block, key)) >= 0);
        }
        return near[0];
    }

    private static long pair(Block block, int key) {
        return (long) block.ordinal() << 32 | key & 0xffffffffL;
    }
}
