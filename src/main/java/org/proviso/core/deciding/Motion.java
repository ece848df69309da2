package org.proviso.core.deciding;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;

/**
 * What is put to the vote: how to settle one envelope, or a consent group of several, by envelope number. Those pulled
 * out of the group are not put with it. {@code result} is null until the motion is voted on or withdrawn.
 */
public record Motion(
        DecisionOutcome asks,
        Set<EnvelopeNumber> envelopes,
        Set<EnvelopeNumber> pulledOut,
        @Nullable MotionResult result) {

    /** The envelopes that the vote is about. */
    public Set<EnvelopeNumber> put() {
        Set<EnvelopeNumber> put = new LinkedHashSet<>(envelopes);
        put.removeAll(pulledOut);
        return put;
    }
}
