package org.proviso.core.deciding;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.proviso.core.Election.DecidingBody;

/**
 * The vote of one body on one motion: who is present, who recused from which envelopes, and how each voted. Members go
 * by their user names.
 */
public record BodyVote(
        DecidingBody body, Set<String> present, Map<String, Set<String>> recusals, Map<String, Vote> votes) {

    /** Who takes no part: recused from one of these envelopes, or recorded as recused in place of a vote. */
    Set<String> recused(Set<String> envelopes) {
        Set<String> recused = new LinkedHashSet<>();
        recusals.forEach((member, from) -> {
            if (from.stream().anyMatch(envelopes::contains)) {
                recused.add(member);
            }
        });
        votes.forEach((member, vote) -> {
            if (vote == Vote.RECUSED) {
                recused.add(member);
            }
        });
        return recused;
    }

    /** Who is there and takes part. */
    Set<String> taking(Set<String> envelopes) {
        Set<String> taking = new LinkedHashSet<>(present);
        taking.removeAll(recused(envelopes));
        return taking;
    }

    VoteTally tally() {
        return new VoteTally(count(Vote.YES), count(Vote.NO));
    }

    private int count(Vote vote) {
        return (int) votes.values().stream().filter(vote::equals).count();
    }
}
