package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.matching.Candidate;
import org.proviso.core.matching.LateRoll;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.MatchVerdict;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.MessyElection;
import org.proviso.core.matching.SmallRoll;
import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.late.LateMatching;
import org.proviso.core.matching.late.NearVoters;

/** A roll updated over its index answers as one indexed anew, and moves nobody whom the update does not concern. */
class UpdatedRollTest {

    private static final int VOTERS = 3_000;
    private static final int ENVELOPES = 400;

    /** What far-fetched candidates weigh: keys share lists by their numbers' ends, in a small index with other keys. */
    private static final double OF_CHANCE = 1e-3;

    private static final double FAR_FETCHED = 1e-3;

    /** A candidate below one percent is shown to nobody. */
    private static final double SHOWN = 1e-2;

    /** Counts of names and homes are those of the older roll: they move odds by a few bits where counts are small. */
    private static final double OF_COUNTS = 4;

    @Property(tries = 8, seed = "6", shrinking = ShrinkingMode.OFF)
    void where_counts_stay_envelopes_come_out_as_by_an_index_made_anew(@ForAll long seed) throws IOException {
        MessyElection election = new MessyElection(seed, VOTERS, ENVELOPES);
        LateRoll late = LateRoll.corrected(election, new Random(seed));
        List<Match> updated = new Matcher(late.over(index(election))).matchAll(election.envelopes, 2);
        List<Match> anew = new Matcher(late.rebuilt()).matchAll(election.envelopes, 2);
        for (int i = 0; i < anew.size(); i++) {
            alike(updated.get(i), anew.get(i));
        }
    }

    @Property(tries = 8, seed = "6", shrinking = ShrinkingMode.OFF)
    void envelopes_find_the_candidates_that_an_index_made_anew_finds(@ForAll long seed) throws IOException {
        MessyElection election = new MessyElection(seed, VOTERS, ENVELOPES);
        LateRoll late = LateRoll.of(election, new Random(seed));
        Matcher updated = new Matcher(late.over(index(election)));
        Matcher anew = new Matcher(late.rebuilt());
        int otherVerdict = 0;
        for (MatchQuery envelope : election.envelopes) {
            Match match = SmallRoll.match(updated, envelope);
            Match other = SmallRoll.match(anew, envelope);
            for (Candidate candidate : other.candidates()) {
                assertThat(bits(match, candidate.voterId()))
                        .as("%s of %s", candidate, envelope)
                        .isCloseTo(bits(other, candidate.voterId()), within(OF_COUNTS));
            }
            otherVerdict += match.verdict() == other.verdict() ? 0 : 1;
        }
        assertThat(otherVerdict).as("verdicts that counts alone change").isLessThanOrEqualTo(ENVELOPES / 50);
    }

    @Property(tries = 8, seed = "6", shrinking = ShrinkingMode.OFF)
    void an_envelope_near_no_changed_voter_comes_out_as_before(@ForAll long seed) throws IOException {
        MessyElection election = new MessyElection(seed, VOTERS, ENVELOPES);
        LateRoll late = LateRoll.of(election, new Random(seed));
        RollIndex index = index(election);
        Matcher before = new Matcher(index);
        Matcher updated = new Matcher(late.over(index));
        Set<MatchQuery> near = new HashSet<>(late.near().among(election.envelopes));
        int far = 0;
        for (MatchQuery envelope : election.envelopes) {
            if (!near.contains(envelope)) {
                far++;
                alike(SmallRoll.match(updated, envelope), SmallRoll.match(before, envelope));
            }
        }
        assertThat(far).as("envelopes left alone").isGreaterThan(ENVELOPES / 10);
    }

    @Property(tries = 8, seed = "6", shrinking = ShrinkingMode.OFF)
    void envelopes_matched_anew_and_all_others_as_they_were_are_as_if_all_were_matched(@ForAll long seed)
            throws IOException {
        MessyElection election = new MessyElection(seed, VOTERS / 10, 4 * ENVELOPES);
        LateRoll late = LateRoll.of(election, new Random(seed));
        RollIndex index = index(election);
        Map<EnvelopeNumber, Match> now = new LinkedHashMap<>();
        Map<EnvelopeNumber, VoterId> claims = new HashMap<>();
        for (Match match : new Matcher(index).matchAll(election.envelopes, 2)) {
            now.put(match.envelopeNo(), match);
            boolean linked = match.verdict() == MatchVerdict.SURE || match.verdict() == MatchVerdict.LIKELY;
            claims.put(match.envelopeNo(), linked ? match.best().orElseThrow().voterId() : null);
        }
        Matcher updated = new Matcher(late.over(index));
        List<Match> again = new LateMatching(updated, election.envelopes, claims, late::records, 2).near(late.near());
        assertThat(again).as("some are left alone").hasSizeLessThan(election.envelopes.size());
        again.forEach(match -> now.put(match.envelopeNo(), match));
        Map<EnvelopeNumber, MatchQuery> envelopes = new HashMap<>();
        election.envelopes.forEach(envelope -> envelopes.put(envelope.envelopeNo(), envelope));
        for (Match match : updated.matchAll(election.envelopes, 2)) {
            NearOne near = new NearOne(late, envelopes.get(match.envelopeNo()));
            alike(now.get(match.envelopeNo()), match, near::isCompared);
        }
    }

    @Property(tries = 4, seed = "6", shrinking = ShrinkingMode.OFF)
    void the_look_up_finds_what_it_finds_in_an_index_made_anew(@ForAll long seed) throws IOException {
        MessyElection election = new MessyElection(seed, VOTERS, ENVELOPES);
        LateRoll late = LateRoll.of(election, new Random(seed));
        UpdatedRoll updated = late.over(index(election));
        VoterLookup lookup = new VoterLookup(updated);
        VoterLookup other = new VoterLookup(UpdatedRoll.of(late.rebuilt()));
        assertThat(updated.size()).isEqualTo(late.after.size());
        for (RollChange change : late.changes) {
            for (RollEntry entry : new RollEntry[] {change.before(), change.after()}) {
                if (entry != null) {
                    String last = entry.name().last();
                    String home = entry.houseNumber() + " " + entry.street();
                    assertThat(lookup.named(last, "", 25)).isEqualTo(other.named(last, "", 25));
                    assertThat(lookup.named(last, entry.name().first(), 25))
                            .isEqualTo(other.named(last, entry.name().first(), 25));
                    assertThat(lookup.born(entry.birthDate(), 3)).isEqualTo(other.born(entry.birthDate(), 3));
                    assertThat(lookup.at(home, 25)).isEqualTo(other.at(home, 25));
                    assertThat(lookup.numbered(entry.voterId().value(), 25))
                            .isEqualTo(other.numbered(entry.voterId().value(), 25));
                }
            }
        }
    }

    private static void alike(Match match, Match other) {
        alike(match, other, candidate -> candidate.probability() > FAR_FETCHED);
    }

    private static void alike(Match match, Match other, Predicate<Candidate> isCompared) {
        assertThat(match.verdict()).as("%s and %s", match, other).isEqualTo(other.verdict());
        assertThat(match.reason()).isEqualTo(other.reason());
        has(match, other.candidates(), isCompared);
        has(other, match.candidates(), isCompared);
    }

    private static void has(Match match, List<Candidate> candidates, Predicate<Candidate> isCompared) {
        for (Candidate candidate : candidates) {
            if (isCompared.test(candidate)) {
                assertThat(match.candidates())
                        .filteredOn(found -> found.voterId().equals(candidate.voterId()))
                        .singleElement()
                        .satisfies(found -> {
                            assertThat(found.evidence()).isEqualTo(candidate.evidence());
                            assertThat(found.probability()).isCloseTo(candidate.probability(), within(OF_CHANCE));
                        });
            }
        }
    }

    /**
     * A candidate that shares no pair of fields with the envelope stands in one of its lists by chance. In a county of 300
     * that happens; no page shows such a one, and the late match need not look for it.
     */
    private record NearOne(LateRoll late, MatchQuery envelope) {

        boolean isCompared(Candidate candidate) {
            return candidate.probability() > SHOWN
                    || (candidate.probability() > FAR_FETCHED && sharesPair(candidate.voterId()));
        }

        private boolean sharesPair(VoterId voterId) {
            NearVoters near = new NearVoters();
            late.records(Set.of(voterId)).forEach(near::add);
            return !near.among(List.of(envelope)).isEmpty();
        }
    }

    /** The odds that the voter cast it, as a logarithm; what is all but impossible counts as such. */
    private static double bits(Match match, VoterId voterId) {
        double probability = match.candidates().stream()
                .filter(candidate -> candidate.voterId().equals(voterId))
                .mapToDouble(Candidate::probability)
                .findFirst()
                .orElse(0);
        double odds = probability / Math.max(1e-9, 1 - probability);
        return Math.max(-12, Math.min(20, GradeFrequencies.log2(Math.max(1e-9, odds))));
    }

    private static RollIndex index(MessyElection election) {
        RollIndexBuilder builder = RollIndex.builder();
        election.roll.forEach(person -> builder.add(person.entry()));
        return builder.build();
    }
}
