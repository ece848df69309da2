package org.proviso.core.adjudication.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.matching.Candidate;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchVerdict;

class LinkTest {

    private static final Candidate FIRST = new Candidate(new VoterId("V1"), 0.6, List.of("Same surname."));
    private static final Candidate SECOND = new Candidate(new VoterId("V2"), 0.3, List.of("Same birth date."));
    private static final Link LINK = link(VoterIdentityFact.SEVERAL_FIT, "V1", 0.6, "Two fit.", FIRST, SECOND);

    private static Link link(
            VoterIdentityFact identity, String voterId, double probability, String likeness, Candidate... candidates) {
        return new Link(identity, VoterId.orNull(voterId), probability, List.of(likeness), List.of(candidates));
    }

    private static Match match(MatchVerdict verdict, Candidate... candidates) {
        return new Match(new EnvelopeNumber("E-1"), verdict, "Two fit.", List.of(candidates));
    }

    @Test
    void a_sure_match_presumes_its_voter_and_a_likely_one_names_who_fits_well() {
        Link sure = Link.presumed(match(MatchVerdict.SURE, FIRST));
        assertThat(sure.identity()).isEqualTo(VoterIdentityFact.PRESUMED);
        assertThat(sure.voterId()).isEqualTo(new VoterId("V1"));
        assertThat(sure.probability()).isEqualTo(0.6);
        assertThat(sure.likeness()).containsExactly("Two fit.", "Same surname.");
        Link likely = Link.presumed(match(MatchVerdict.LIKELY, FIRST));
        assertThat(likely.identity()).isEqualTo(VoterIdentityFact.ONE_FITS_WELL);
        assertThat(likely.voterId()).isEqualTo(new VoterId("V1"));
        assertThat(likely.doubt()).isEmpty();
    }

    @Test
    void where_several_fit_none_is_named_and_all_are_listed() {
        Link several = Link.presumed(match(MatchVerdict.AMBIGUOUS, FIRST, SECOND));
        assertThat(several.identity()).isEqualTo(VoterIdentityFact.SEVERAL_FIT);
        assertThat(several.voterId()).isNull();
        assertThat(several.candidates()).containsExactly(FIRST, SECOND);
        assertThat(several.doubt()).isEqualTo("Two fit.");
    }

    @Test
    void where_nobody_fits_nothing_is_presumed() {
        Link none = Link.presumed(match(MatchVerdict.NONE));
        assertThat(none).isEqualTo(new Link(VoterIdentityFact.NONE_FITS, null, 0, List.of()));
        assertThat(none.doubt()).isEmpty();
    }

    @Test
    void several_who_fit_without_a_ground_leave_no_doubt_in_words() {
        assertThat(new Link(VoterIdentityFact.SEVERAL_FIT, null, 0.5, List.of()).doubt())
                .isEmpty();
    }

    @Test
    void a_sure_match_without_a_candidate_is_a_fault_of_the_program() {
        assertThatNullPointerException()
                .isThrownBy(() -> Link.presumed(match(MatchVerdict.SURE)))
                .withMessage("a match with one voter names the candidate");
    }

    @ParameterizedTest
    @EnumSource(VoterIdentityFact.class)
    void only_a_person_settles_who_the_voter_is(VoterIdentityFact identity) {
        assertThat(new Link(identity, null, 0, List.of()).isSettled())
                .isEqualTo(identity == VoterIdentityFact.CONFIRMED || identity == VoterIdentityFact.NOT_ON_ROLL);
    }

    @Test
    void two_links_say_the_same_where_no_figure_moved_by_a_tenth_of_a_percent() {
        assertThat(LINK.saysTheSame(LINK)).isTrue();
        Candidate moved = new Candidate(new VoterId("V2"), 0.3009, SECOND.evidence());
        Candidate unseen = new Candidate(new VoterId("V3"), 0.0009, List.of("Same city."));
        assertThat(LINK.saysTheSame(link(LINK.identity(), "V1", 0.6009, "Two fit.", FIRST, moved, unseen)))
                .isTrue();
    }

    @Test
    void a_tenth_of_a_percent_is_a_figure_that_moved() {
        Candidate none = new Candidate(new VoterId("V1"), 0, FIRST.evidence());
        Candidate tenth = new Candidate(new VoterId("V1"), 0.001, FIRST.evidence());
        Link link = link(VoterIdentityFact.SEVERAL_FIT, null, 0, "Two fit.");
        assertThat(link.saysTheSame(link(link.identity(), null, 0.001, "Two fit.")))
                .as("the best")
                .isFalse();
        assertThat(link.saysTheSame(link(link.identity(), null, 0, "Two fit.", tenth)))
                .as("a candidate that is shown now")
                .isFalse();
        assertThat(link(link.identity(), null, 0, "Two fit.", none)
                        .saysTheSame(link(link.identity(), null, 0, "Two fit.", tenth)))
                .as("a candidate whose figure moved")
                .isFalse();
    }

    @Test
    void a_match_without_a_ground_of_its_own_gives_the_evidence_alone() {
        Match match = new Match(new EnvelopeNumber("E-1"), MatchVerdict.SURE, "", List.of(FIRST));
        assertThat(Link.presumed(match).likeness()).containsExactly("Same surname.");
    }

    @ParameterizedTest
    @MethodSource
    void whatever_a_person_would_read_otherwise_is_not_the_same(Link other) {
        assertThat(LINK.saysTheSame(other)).isFalse();
        assertThat(other.saysTheSame(LINK)).isFalse();
    }

    static Stream<Link> whatever_a_person_would_read_otherwise_is_not_the_same() {
        VoterIdentityFact several = VoterIdentityFact.SEVERAL_FIT;
        return Stream.of(
                link(VoterIdentityFact.ONE_FITS_WELL, "V1", 0.6, "Two fit.", FIRST, SECOND),
                link(several, "V9", 0.6, "Two fit.", FIRST, SECOND),
                link(several, "V1", 0.602, "Two fit.", FIRST, SECOND),
                link(several, "V1", 0.6, "Several fit.", FIRST, SECOND),
                link(several, "V1", 0.6, "Two fit.", FIRST),
                link(several, "V1", 0.6, "Two fit.", FIRST, new Candidate(new VoterId("V3"), 0.3, SECOND.evidence())),
                link(several, "V1", 0.6, "Two fit.", FIRST, new Candidate(new VoterId("V2"), 0.302, SECOND.evidence())),
                link(
                        several,
                        "V1",
                        0.6,
                        "Two fit.",
                        FIRST,
                        new Candidate(new VoterId("V2"), 0.3, List.of("Same city."))));
    }
}
