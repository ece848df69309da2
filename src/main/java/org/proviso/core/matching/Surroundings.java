package org.proviso.core.matching;

/** The roll that a few newer records belong to: its index, and of that what these records, or none, have replaced. */
record Surroundings(RollIndex index, RollIndex gone) {

    /** How many voters of the roll stand in that list, the newer ones left out. */
    int length(Block block, int key) {
        return Math.max(0, length(index, block, key) - length(gone, block, key));
    }

    private static int length(RollIndex of, Block block, int key) {
        return of.lists().end(block, key) - of.lists().start(block, key);
    }
}
