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
import org.proviso.core.matching.VoterLookup;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Component;

/**
 * What the match presumes of envelopes, over the roll in use. The index of the last roll asked for is kept: new and
 * corrected envelopes are matched without making it again. Thread-safe; who asks while it is being made waits for it.
 */
@Component
class RollMatches {

    private static final int THREADS = 2;

    private record Kept(String rollHash, RollIndex index) {}

    private final RollService roll;
    private volatile @Nullable Kept kept;
    private volatile boolean reading;

    RollMatches(RollService roll) {
        this.roll = roll;
    }

    /** By envelope number. */
    Map<String, Link> presumed(String electionId, List<Envelope> envelopes) {
        return presumed(index(electionId), envelopes);
    }

    /** The same over voters at hand. */
    static Map<String, Link> presumed(Collection<Voter> voters, List<Envelope> envelopes) {
        RollIndexBuilder index = RollIndex.builder();
        voters.forEach(index::add);
        return presumed(index.build(), envelopes);
    }

    /** Makes the index of an election's roll ready before anybody asks. */
    void prepare(String electionId) {
        index(electionId);
    }

    /** The look-up over the roll in use. */
    VoterLookup lookup(String electionId) {
        return new VoterLookup(index(electionId));
    }

    /** Whether a roll is being read into its index just now. */
    boolean isReading() {
        return reading;
    }

    private RollIndex index(String electionId) {
        String hash = roll.rollHash(electionId);
        Kept last = kept;
        return last != null && last.rollHash().equals(hash) ? last.index() : made(electionId, hash);
    }

    private synchronized RollIndex made(String electionId, String hash) {
        Kept last = kept;
        if (last == null || !last.rollHash().equals(hash)) {
            reading = true;
            try {
                RollIndexBuilder index = RollIndex.builder();
                roll.entries(electionId, index::add);
                last = new Kept(hash, index.build());
                kept = last;
            } finally {
                reading = false;
            }
        }
        return last.index();
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
