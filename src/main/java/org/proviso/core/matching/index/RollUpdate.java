package org.proviso.core.matching.index;

import java.util.HashSet;
import java.util.Set;
import org.proviso.core.VoterId;

/**
 * What a newer roll says otherwise than the one an index was made from. Only these voters are indexed; the big index stays
 * as it is. Not thread-safe; of use once.
 */
public final class RollUpdate {

    private final RollIndexBuilder before = RollIndex.builder();
    private final RollPortion after = new RollPortion();
    private final Set<VoterId> gone = new HashSet<>();
    private int changes;

    public RollUpdate() {
        after.begin(0);
    }

    public void add(RollChange change) {
        if (change.readsAlike()) {
            return;
        }
        changes++;
        if (change.before() != null) {
            before.add(change.before());
            gone.add(change.before().voterId());
        }
        if (change.after() != null) {
            after.add(change.after());
        }
    }

    /** How many voters the match reads otherwise. */
    public int size() {
        return changes;
    }

    /** The newer roll, by the index of the older one. */
    public UpdatedRoll over(RollIndex index) {
        if (changes == 0) {
            return UpdatedRoll.of(index);
        }
        RollIndex added = RollJoining.within(index, before.build(), after);
        return new UpdatedRoll(index, index.placesOf(gone), added);
    }
}
