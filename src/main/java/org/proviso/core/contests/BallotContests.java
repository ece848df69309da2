package org.proviso.core.contests;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * The contests in play for one envelope: those on the ballot cast, those of the right style, and which contests are
 * for federal office. The same contest is the same office in the same district, so two styles share it by its id.
 * Kansas puts it most sharply: only offices and questions identical in both precincts (K.S.A. 25-3002(b)(3)).
 */
public record BallotContests(Set<String> cast, Set<String> right, Set<String> federal) {

    /** The contests of the ballot cast that count under every one of the policies, in the ballot's order. */
    public Set<String> countedUnder(Collection<ContestPolicy> policies) {
        Set<String> counted = new LinkedHashSet<>(cast);
        for (ContestPolicy policy : policies) {
            counted.retainAll(policy == ContestPolicy.FEDERAL_CONTESTS ? federal : right);
        }
        return counted;
    }

    /** On the ballot cast, but not the voter's to vote. */
    public Set<String> notTheirs() {
        Set<String> dropped = new LinkedHashSet<>(cast);
        dropped.removeAll(right);
        return dropped;
    }

    /** The voter's own, missing from the ballot cast: lost to the voter, and told in the notice. */
    public Set<String> missing() {
        Set<String> lost = new LinkedHashSet<>(right);
        lost.removeAll(cast);
        return lost;
    }
}
