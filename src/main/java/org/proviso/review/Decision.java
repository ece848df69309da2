package org.proviso.review;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;

/**
 * How an envelope was settled: the outcome, its reasons with the main one first, the place in the law, why it departs
 * from the recommendation (null where it does not), and the contests that count where a part does. {@code decider} is
 * official, board, two_bodies or court.
 */
public record Decision(
        int number,
        DecidedAs as,
        List<Reason> reasons,
        String legalReference,
        @Nullable String departsBecause,
        Set<String> contests,
        String decider,
        @Nullable Integer sessionNo,
        @Nullable Integer motionNo,
        Instant decidedAt) {}
