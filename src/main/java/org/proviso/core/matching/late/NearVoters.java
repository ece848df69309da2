package org.proviso.core.matching.late;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.EnvelopePerson;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.index.BlockingKey;
import org.proviso.core.matching.index.KeyFields;
import org.proviso.core.matching.index.ListNumbering;
import org.proviso.core.matching.index.NearNames;
import org.proviso.core.matching.index.RollChange;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.index.VoterKeys;
import org.proviso.core.matching.spelling.IntColumn;

/**
 * Tells which envelopes a few voters may concern: those that share a pair of fields with one of their records, older or
 * newer. Any other envelope comes out of the match as before. Not thread-safe.
 */
public final class NearVoters {

    private static final BlockingKey[] BLOCKS = BlockingKey.values();

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
        for (BlockingKey block : BLOCKS) {
            numbers.empty();
            for (int voter = 0; voter < index.size(); voter++) {
                keys.lists(voter, block, ListNumbering.EXACT, numbers);
            }
            note(block);
        }
        Arrays.sort(pairs, 0, count);
        NearNames names = index.lists().nearSurnames();
        KeyFields fields = new KeyFields();
        return envelopes.stream()
                .filter(envelope -> isNear(EnvelopePerson.of(envelope), fields, names))
                .toList();
    }

    private void note(BlockingKey block) {
        pairs = Arrays.copyOf(pairs, Math.max(pairs.length, 2 * (count + numbers.size())));
        for (int i = 0; i < numbers.size(); i++) {
            pairs[count++] = pair(block, numbers.get(i));
        }
    }

    /** As written, or with the surname replaced by one of theirs that it may be a misspelling of. */
    private boolean isNear(EnvelopePerson claim, KeyFields fields, NearNames names) {
        claim.fill(fields);
        return isNear(fields) || (names.anyNear(claim.name().surname(), fields) && isNear(fields));
    }

    private boolean isNear(KeyFields fields) {
        for (BlockingKey block : BLOCKS) {
            numbers.empty();
            block.lists(fields, ListNumbering.EXACT, numbers);
            for (int i = 0; i < numbers.size(); i++) {
                if (Arrays.binarySearch(pairs, 0, count, pair(block, numbers.get(i))) >= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static long pair(BlockingKey block, int number) {
        return (long) block.ordinal() << 32 | (number & 0xffffffffL);
    }
}
