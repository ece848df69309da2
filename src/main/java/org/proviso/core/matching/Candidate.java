package org.proviso.core.matching;

import java.util.List;
import org.proviso.core.VoterId;

/**
 * One possible voter of an envelope.
 *
 * @param probability between 0 and 1: that this voter cast it, weighed against all other voters and against its being
 *     nobody on the roll
 * @param evidence one sentence for each field that speaks for or against
 */
public record Candidate(VoterId voterId, double probability, List<String> evidence) {

    public Candidate {
        evidence = List.copyOf(evidence);
    }
}
