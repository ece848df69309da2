package org.proviso.review.facts;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.proviso.core.adjudication.finding.Link;

/** Which envelopes are linked, or presumed linked, to a voter. */
interface LinkedEnvelopes {

    Set<String> of(String voterId);

    /** By links at hand, which need not be those of the tables. */
    static LinkedEnvelopes of(Map<String, Link> links) {
        Map<String, Set<String>> byVoter = new HashMap<>();
        links.forEach((envelopeNo, link) -> {
            if (link.voterId() != null) {
                byVoter.computeIfAbsent(link.voterId(), any -> new LinkedHashSet<>())
                        .add(envelopeNo);
            }
        });
        return voterId -> byVoter.getOrDefault(voterId, Set.of());
    }
}
