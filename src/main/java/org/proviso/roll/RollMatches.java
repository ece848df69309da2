package org.proviso.roll;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.index.VoterLookup;
import org.proviso.core.matching.late.LateMatching;
import org.proviso.core.matching.late.NearVoters;
import org.springframework.stereotype.Component;

/** What the match presumes of envelopes, over the roll in use; nothing is made for an envelope but its own match. */
@Component
public class RollMatches {

    private static final int THREADS = 2;

    private final RollIndexCache holder;
    private final RollService roll;

    RollMatches(RollIndexCache holder, RollService roll) {
        this.holder = holder;
        this.roll = roll;
    }

    /** By envelope number. */
    public Map<EnvelopeNumber, Link> presumed(ElectionId electionId, List<Envelope> envelopes) {
        return presumed(holder.matcher(electionId), envelopes);
    }

    /** The same over voters at hand. */
    public static Map<EnvelopeNumber, Link> presumed(Collection<Voter> voters, List<Envelope> envelopes) {
        RollIndexBuilder index = RollIndex.builder();
        voters.forEach(index::add);
        return presumed(new Matcher(index.build()), envelopes);
    }

    /** What the match says of those open envelopes which voters that changed may concern; claims as linked so far. */
    public List<Match> matchedNear(
            ElectionId electionId, List<MatchQuery> open, Map<EnvelopeNumber, VoterId> claims, NearVoters changed) {
        return new LateMatching(
                        holder.matcher(electionId), open, claims, ids -> roll.entriesOf(electionId, ids), THREADS)
                .near(changed);
    }

    /** A newer roll was put in use, within the transaction that runs. */
    public void used(ElectionId electionId) {
        holder.used(electionId);
    }

    /** Makes the index of an election's roll ready before anybody asks. */
    public void prepare(ElectionId electionId) {
        lookup(electionId).practice();
    }

    /** The look-up over the roll in use. */
    VoterLookup lookup(ElectionId electionId) {
        return new VoterLookup(holder.roll(electionId));
    }

    /** Whether who asks now waits until a roll is read. */
    boolean isReading() {
        return holder.isReading();
    }

    private static Map<EnvelopeNumber, Link> presumed(Matcher matcher, List<Envelope> envelopes) {
        List<MatchQuery> queries = envelopes.stream().map(MatchQuery::of).toList();
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        for (Match match : matcher.matchAll(queries, THREADS)) {
            links.put(match.envelopeNo(), Link.presumed(match));
        }
        return links;
    }
}
