package org.proviso.review;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/**
 * How an envelope was settled: the outcome, its reasons with the main one first, the place in the law, why it departs
 * from the recommendation (null where it does not), the contests that count where a part does, and the number of the
 * assessment it rests on. {@code decider} is
 * official, board, two_bodies or court. The ballot is as the release team needs it.
 */
public record Decision(
        int number,
        DecisionOutcome as,
        List<Reason> reasons,
        String legalReference,
        @Nullable String departsBecause,
        Set<String> contests,
        int assessment,
        String decider,
        @Nullable Integer sessionNo,
        @Nullable Integer motionNo,
        Instant decidedAt,
        DecidedBallot ballot) {

    /**
     * The ballot of a decided envelope: the style cast, the voter's own (several joined by {@code ;} where they have the
     * same contests, empty where nobody knows), and whether it is kept apart from all others.
     */
    public record DecidedBallot(String styleCast, String styleRight, boolean heldApart) {}
}
