package org.proviso.core.matching;

import java.util.List;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;

/**
 * The computed pairing of one envelope: its verdict and at most five candidates, best first.
 *
 * @param reason in words for the office why it is not sure; empty for a sure one
 */
public record Match(EnvelopeNumber envelopeNo, MatchVerdict verdict, String reason, List<Candidate> candidates) {

    public Match {
        candidates = List.copyOf(candidates);
    }

    public Optional<Candidate> best() {
        return candidates.isEmpty() ? Optional.empty() : Optional.of(candidates.get(0));
    }
}
