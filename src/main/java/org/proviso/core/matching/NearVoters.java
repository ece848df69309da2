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
    private final IntColumn numbers = new IntColumn();
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
        for (Block block : BLOCKS) {
            numbers.empty();
            for (int voter = 0; voter < index.size(); voter++) {
                keys.lists(voter, block, Slots.EXACT, numbers);
            }
            note(block);
        }
        Arrays.sort(pairs, 0, count);
        NearNames names = index.lists().nearSurnames();
        KeyFields fields = new KeyFields();
        return envelopes.stream()
                .filter(envelope -> isNear(Claim.of(envelope), fields, names))
                .toList();
    }

    private void note(Block block) {
        pairs = Arrays.copyOf(pairs, Math.max(pairs.length, 2 * (count + numbers.size())));
        for (int i = 0; i < numbers.size(); i++) {
            pairs[count++] = pair(block, numbers.get(i));
        }
    }

    /** As written, or with the surname as one of theirs of which it may be a slip. */
    private boolean isNear(Claim claim, KeyFields fields, NearNames names) {
        claim.fill(fields);
        return isNear(fields) || (names.anyNear(claim.name().surname(), fields) && isNear(fields));
    }

    private boolean isNear(KeyFields fields) {
        for (Block block : BLOCKS) {
            numbers.empty();
            block.lists(fields, Slots.EXACT, numbers);
            for (int i = 0; i < numbers.size(); i++) {
                if (Arrays.binarySearch(pairs, 0, count, pair(block, numbers.get(i))) >= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static long pair(Block block, int number) {
        return (long) block.ordinal() << 32 | (number & 0xffffffffL);
    }
}
