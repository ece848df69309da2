package org.proviso.review;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.Link;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.RollIndex;
import org.proviso.core.matching.RollIndexBuilder;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Component;

/** What the match presumes of envelopes, over the roll in use. The index of the last roll asked for is kept. Thread-safe. */
@Component
class RollMatches {

    private static final int THREADS = 2;

    private record Kept(String rollHash, RollIndex index) {}

    private final RollService roll;
    private volatile @Nullable Kept kept;

    RollMatches(RollService roll) {
        this.roll = roll;
    }

    /** By envelope number. */
    Map<String, Link> presumed(String electionId, List<Envelope> envelopes) {
        return presumed(index(electionId), envelopes);
    }

    /** The same over voters at hand. */
    static Map<String, Link> presumed(Collection<Voter> voters, List<Envelope> envelopes) {
        return presumed(built(voters), envelopes);
    }

    private RollIndex index(String electionId) {
        String hash = roll.rollHash(electionId);
        Kept last = kept;
        if (last == null || !last.rollHash().equals(hash)) {
            last = new Kept(hash, built(roll.roll(electionId)));
            kept = last;
        }
        return last.index();
    }

    private static RollIndex built(Collection<Voter> voters) {
        RollIndexBuilder index = RollIndex.builder();
        voters.forEach(index::add);
        return index.build();
    }

    private static Map<String, Link> presumed(RollIndex index, List<Envelope> envelopes) {
        List<MatchQuery> queries = envelopes.stream().map(MatchQuery::of).toList();
        Map<String, Link> links = new LinkedHashMap<>();
        for (Match match : new Matcher(index).matchAll(queries, THREADS)) {
            links.put(match.envelopeNo(), Link.presumed(match));
        }
        return links;
    }
}
