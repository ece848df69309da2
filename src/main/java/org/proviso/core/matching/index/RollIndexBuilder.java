package org.proviso.core.matching.index;

import java.util.List;
import org.proviso.core.Voter;

/** Takes roll records one by one and makes the index. Not thread-safe; of use once. */
public final class RollIndexBuilder {

    private final RollPortion portion = new RollPortion();

    RollIndexBuilder() {
        portion.begin(0);
    }

    public RollIndexBuilder add(Voter voter) {
        return add(RollEntry.of(voter));
    }

    public RollIndexBuilder add(RollEntry entry) {
        portion.add(entry);
        return this;
    }

    /** The index over all records added. */
    public RollIndex build() {
        return RollIndex.of(List.of(portion));
    }
}
