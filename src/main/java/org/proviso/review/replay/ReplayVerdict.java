package org.proviso.review.replay;

import java.util.List;

/**
 * What making every assessment of an election again found, counted by way: how many came out to the last letter, how
 * many did not, with the first of them named, and how many another version of the engine made, which cannot be made again.
 */
public record ReplayVerdict(long agreeing, long differing, long ofAnotherEngine, List<ReplayDifference> first) {

    /** Whether none differs. */
    public boolean isWhole() {
        return differing == 0;
    }
}
