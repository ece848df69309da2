package org.proviso.files.csv;

import java.util.List;
import java.util.stream.IntStream;

/** Whether hashes of 64 bits are all different: then so are the keys they were made of. */
public record UniqueHashes(List<LongColumn> columns) {

    /** Each worker looks at the hashes of one remainder, so that they share nothing. */
    public boolean areUnique(int workers) {
        return IntStream.range(0, workers).parallel().allMatch(worker -> areUnique(worker, workers));
    }

    private boolean areUnique(int worker, int workers) {
        int count = columns.stream().mapToInt(LongColumn::size).sum();
        int slots = Integer.highestOneBit(Math.max(1024, (int) (2.2 * count / workers))) << 1;
        long[] seen = new long[slots];
        boolean zeroSeen = false;
        for (LongColumn column : columns) {
            for (int i = 0; i < column.size(); i++) {
                long hash = column.get(i);
                if ((hash >>> 1) % workers != worker) {
                    continue;
                }
                if (hash == 0) {
                    if (zeroSeen) {
                        return false;
                    }
                    zeroSeen = true;
                    continue;
                }
                int slot = (int) (hash >>> 32) & slots - 1;
                while (seen[slot] != 0) {
                    if (seen[slot] == hash) {
                        return false;
                    }
                    slot = slot + 1 & slots - 1;
                }
                seen[slot] = hash;
            }
        }
        return true;
    }
}
