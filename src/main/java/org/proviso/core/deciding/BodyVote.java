package org.proviso.core.deciding;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;

/**
 * The vote of one body on one motion: who is present, who recused from which envelopes, and how each voted. Members go
 * by their user names.
 */
public record BodyVote(
        DecidingBody body,
        Set<UserName> present,
        Map<UserName, Set<EnvelopeNumber>> recusals,
        Map<UserName, Vote> votes) {

    /** Who takes no part: recused from one of these envelopes, or recorded as recused in place of a vote. */
    Set<UserName> recused(Set<EnvelopeNumber> envelopes) {
        Set<UserName> recused = new LinkedHashSet<>();
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
    Set<UserName> taking(Set<EnvelopeNumber> envelopes) {
        Set<UserName> taking = new LinkedHashSet<>(present);
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
