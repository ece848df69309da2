package org.proviso.review.facts;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;

/** Which envelopes are linked, or presumed linked, to a voter. */
interface LinkedEnvelopes {

    Set<EnvelopeNumber> of(VoterId voterId);

    /** By links at hand, which need not be those of the tables. */
    static LinkedEnvelopes of(Map<EnvelopeNumber, Link> links) {
        Map<VoterId, Set<EnvelopeNumber>> byVoter = new HashMap<>();
        links.forEach((envelopeNo, link) -> {
            if (link.voterId() != null) {
                byVoter.computeIfAbsent(link.voterId(), any -> new LinkedHashSet<>())
                        .add(envelopeNo);
            }
        });
        return voterId -> byVoter.getOrDefault(voterId, Set.of());
    }
}
