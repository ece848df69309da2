package org.proviso.core.deciding;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is put to the vote: how to settle one envelope, or a consent group of several, by envelope number. Those pulled
 * out of the group are not put with it. {@code result} is null until the motion is voted on or withdrawn.
 */
public record Motion(
        DecisionOutcome asks,
        Set<String> envelopes,
        Set<String> pulledOut,
        @Nullable MotionResult result) {

    /** The envelopes that the vote is about. */
    public Set<String> put() {
        Set<String> put = new LinkedHashSet<>(envelopes);
        put.removeAll(pulledOut);
        return put;
    }
}
