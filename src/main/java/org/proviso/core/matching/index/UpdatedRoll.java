package org.proviso.core.matching.index;

import java.util.BitSet;
import java.util.List;
import org.proviso.core.VoterId;

/**
 * A roll by an index made earlier and what has changed since: voters whose records are gone or read otherwise are passed
 * over in the big index, and the new records stand in a small one. An envelope that comes near none of them is matched as
 * by the big index alone. Read only; thread-safe.
 */
public final class UpdatedRoll {

    private final RollIndex index;
    private final BitSet gone;
    private final RollIndex added;

    UpdatedRoll(RollIndex index, BitSet gone, RollIndex added) {
        this.index = index;
        this.gone = gone;
        this.added = added;
    }

    /** The roll as it was indexed, with nothing changed since. */
    public static UpdatedRoll of(RollIndex index) {
        return new UpdatedRoll(index, new BitSet(), RollIndex.builder().build());
    }

    /** How many voters the roll has now. */
    public int size() {
        return index.size() - gone.cardinality() + added.size();
    }

    /** How many voters are passed over or stand in the small index. */
    public int changed() {
        return gone.cardinality() + added.size();
    }

    /** The index made earlier, without what has changed since. */
    public RollIndex index() {
        return index;
    }

    public BitSet gone() {
        return gone;
    }

    public RollIndex added() {
        return added;
    }

    /** Both parts; a place beyond the big index is one of the small. */
    public List<RollIndex> parts() {
        return added.size() == 0 ? List.of(index) : List.of(index, added);
    }

    /** The part in which a voter stands. */
    public RollIndex part(int voter) {
        return voter < index.size() ? index : added;
    }

    /** The voter's place in that part. */
    public int placeIn(int voter) {
        return voter < index.size() ? voter : voter - index.size();
    }

    public VoterId voterId(int voter) {
        return part(voter).voterId(placeIn(voter));
    }
}
