package org.proviso.review.news;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.late.NearVoters;
import org.proviso.intake.IntakeService;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.StagedList;
import org.springframework.stereotype.Component;

/** What the match says otherwise once a newer roll is in use, of the open envelopes that its differences may concern. */
@Component
class LateMatches {

    private final RollMatches matches;
    private final RollService roll;
    private final IntakeService intake;

    LateMatches(RollMatches matches, RollService roll, IntakeService intake) {
        this.matches = matches;
        this.roll = roll;
        this.intake = intake;
    }

    /** With the newer roll in use: the links that now say something else, of those that stood before. */
    Map<EnvelopeNumber, Link> changed(ElectionId electionId, StagedList staged, Map<EnvelopeNumber, Link> before) {
        List<MatchQuery> open = intake.envelopes(electionId).stream()
                .filter(envelope -> before.containsKey(envelope.envelopeNo()))
                .map(MatchQuery::of)
                .toList();
        Map<EnvelopeNumber, VoterId> claims = new HashMap<>();
        before.forEach((number, link) -> claims.put(number, link.voterId()));
        NearVoters changed = new NearVoters();
        roll.changes(electionId, staged.inUseNo(), staged.snapshotNo(), staged.touchedVoterIds(), changed::add);
        matches.used(electionId);
        Map<EnvelopeNumber, Link> links = new TreeMap<>();
        matches.matchedNear(electionId, open, claims, changed).forEach(match -> {
            Link now = Link.presumed(match);
            Link was = Objects.requireNonNull(
                    before.get(match.envelopeNo()), "only envelopes with a link are matched again");
            if (!now.saysTheSame(was)) {
                links.put(match.envelopeNo(), now);
            }
        });
        return links;
    }
}
