package org.proviso.core.matching;

import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;

/** An envelope with its best candidate; no voter (probability 0) where none came near. */
public record BestCandidate(
        EnvelopeNumber envelopeNo, @Nullable VoterId voterId, double probability, MatchVerdict verdict) {}
