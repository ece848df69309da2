package org.proviso.review.replay;

import java.util.ArrayList;
import java.util.List;

/** Counts what a replay finds and keeps the first differences. */
final class ReplayCount {

    private static final int NAMED = 20;

    private final List<ReplayDifference> first = new ArrayList<>();
    private long agreeing;
    private long differing;
    private long ofAnotherEngine;

    /** {@code wrong} is empty where nothing is. */
    void add(StoredAssessment stored, String wrong) {
        if (!wrong.isEmpty()) {
            differing++;
            if (first.size() < NAMED) {
                first.add(new ReplayDifference(
                        stored.envelopeNo(), stored.number(), stored.origins().way(), wrong));
            }
        } else if (stored.origins().areOfThisEngine()) {
            agreeing++;
        } else {
            ofAnotherEngine++;
        }
    }

    ReplayVerdict verdict() {
        return new ReplayVerdict(agreeing, differing, ofAnotherEngine, List.copyOf(first));
    }
}
