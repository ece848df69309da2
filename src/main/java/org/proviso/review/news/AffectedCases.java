package org.proviso.review.news;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.review.CaseStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.SnapshotService;
import org.proviso.roll.StagedList;
import org.proviso.roll.StateListChange;
import org.springframework.stereotype.Component;

/** Which cases a newer list touches, and in what words: those of the voters it changes, and those it may match anew. */
@Component
class AffectedCases {

    private final LinkStore links;
    private final CaseStore cases;
    private final LateMatches matches;
    private final RollService roll;
    private final SnapshotService snapshots;

    AffectedCases(LinkStore links, CaseStore cases, LateMatches matches, RollService roll, SnapshotService snapshots) {
        this.links = links;
        this.cases = cases;
        this.matches = matches;
        this.roll = roll;
        this.snapshots = snapshots;
    }

    /** With the list in use already: every case it touches with what changed, open ones matched to a newer roll. */
    Map<EnvelopeKey, List<String>> of(ElectionId electionId, StagedList staged) {
        Map<EnvelopeKey, List<String>> touched = new TreeMap<>();
        for (VoterId voterId : staged.touchedVoterIds()) {
            for (EnvelopeNumber envelopeNo : links.envelopesOf(electionId, voterId)) {
                touched.put(
                        new EnvelopeKey(electionId, envelopeNo),
                        snapshots.differences(
                                electionId, staged.kind(), voterId, staged.inUseNo(), staged.snapshotNo()));
            }
        }
        if (staged.kind() == SnapshotKind.VOTED_ELSEWHERE
                && !staged.changedLines().isEmpty()) {
            List<String> words =
                    staged.changedLines().stream().map(StateListChange::words).toList();
            cases.all(electionId).forEach(envelopeCase -> touched.put(envelopeCase.key(), words));
        }
        if (staged.kind() == SnapshotKind.ROLL) {
            matchAgain(electionId, staged).forEach((key, words) -> touched.merge(key, words, AffectedCases::both));
        }
        return touched;
    }

    private static List<String> both(List<String> words, List<String> other) {
        List<String> both = new ArrayList<>(words);
        both.addAll(other);
        return both;
    }

    /**
     * Cases whose voter nobody has settled yet are matched to the newer roll where it may concern them; so are those of whom a
     * search found nobody, for a newer roll helps the voter too.
     */
    private Map<EnvelopeKey, List<String>> matchAgain(ElectionId electionId, StagedList staged) {
        Map<EnvelopeNumber, Link> before = new LinkedHashMap<>(links.all(electionId));
        before.values().removeIf(link -> link.identity() == VoterIdentityFact.CONFIRMED);
        int snapshot = roll.snapshotInUse(electionId, SnapshotKind.ROLL);
        Map<EnvelopeKey, List<String>> matched = new TreeMap<>();
        matches.changed(electionId, staged, before).forEach((number, link) -> {
            EnvelopeKey key = new EnvelopeKey(electionId, number);
            Link was = Objects.requireNonNull(before.get(number), "only envelopes with a link are matched again");
            if (was.isSettled() && !isNewTo(key, link)) {
                return;
            }
            links.insert(key, link, snapshot, null, "");
            matched.put(
                    key, List.of("matched to the newer roll: " + link.identity().meaning()));
        });
        return matched;
    }

    /** Whether the newer roll names one voter who was not before whoever searched and found nobody. */
    private boolean isNewTo(EnvelopeKey key, Link link) {
        VoterId voter = link.voterId();
        return voter != null
                && links.presumed(key)
                        .filter(presumed -> voter.equals(presumed.voterId()))
                        .isEmpty();
    }
}
