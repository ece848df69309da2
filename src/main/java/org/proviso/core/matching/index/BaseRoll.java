package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.IntColumn;

/** The roll that a few newer records belong to: its index, and of that what these records, or none, have replaced. */
public record BaseRoll(RollIndex index, RollIndex gone) {

    /** How many voters of the roll live at a home, the newer records left out. */
    int household(int mixed) {
        return Math.max(
                0,
                index.lists().length(BlockingKey.HOUSE_AND_STREET, mixed)
                        - gone.lists().length(BlockingKey.HOUSE_AND_STREET, mixed));
    }

    /** Adds, for each pair the person has in a block, how many voters of the roll stand on its list, the newer left out. */
    public void lengths(KeyFields of, BlockingKey block, IntColumn sink) {
        IntColumn here = lengths(index.lists(), of, block);
        IntColumn replaced = lengths(gone.lists(), of, block);
        for (int i = 0; i < here.size(); i++) {
            sink.add(Math.max(0, here.get(i) - replaced.get(i)));
        }
    }

    private static IntColumn lengths(InvertedLists lists, KeyFields of, BlockingKey block) {
        IntColumn numbers = new IntColumn(16);
        block.lists(of, lists.slots(block), numbers);
        int[] starts = lists.starts(block);
        IntColumn lengths = new IntColumn(numbers.size());
        for (int i = 0; i < numbers.size(); i++) {
            lengths.add(starts[numbers.get(i) + 1] - starts[numbers.get(i)]);
        }
        return lengths;
    }
}
