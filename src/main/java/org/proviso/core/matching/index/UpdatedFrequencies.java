package org.proviso.core.matching.index;

/**
 * How common the names of a roll with its updates are. Those of the big index stay what they were when it was made, so
 * that a late update moves no envelope that it does not concern; those of the small one are counted anew.
 */
public record UpdatedFrequencies(RollFrequencies index, RollFrequencies added) {

    public static UpdatedFrequencies of(UpdatedRoll roll) {
        RollFrequencies index = new RollFrequencies(roll.index());
        boolean updated = roll.added().size() > 0;
        return new UpdatedFrequencies(index, updated ? index.within(roll.added()) : index);
    }
}
