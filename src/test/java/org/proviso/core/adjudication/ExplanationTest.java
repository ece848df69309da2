package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.explain.Explanation;
import org.proviso.core.adjudication.explain.MatchWords;
import org.proviso.core.adjudication.explain.OutcomeSymbol;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.matching.Candidate;

class ExplanationTest {

    private final SmallCase small = new SmallCase();

    @Test
    void says_what_counts_of_a_ballot_of_another_style_and_why() {
        agrees();
        small.envelope.style = "B";
        assertThat(page())
                .contains("Now \u25D0 count in part", "Reason", "own voting location")
                .contains("WHAT THE ENVELOPE SAYS", "WHAT THE RECORDS SAY", "WHAT THE LAW ASKS", "CONTESTS")
                .contains("Count PRES \u00B7 HOUSE \u00B7 SHERIFF", "Do not count SENATE-8")
                .contains("Not on ballot SENATE-7", "Rule: Example Election Code (invented) 5.3 (2020)");
    }

    @Test
    void says_that_nothing_stands_in_the_way() {
        agrees();
        assertThat(page())
                .contains("\u25CF count", "nothing stands in the way", "linked by a reviewer")
                .doesNotContain("CONTESTS");
    }

    @Test
    void says_what_the_voter_may_bring_and_until_when() {
        small.envelope.idShown = YesNo.NO;
        assertThat(page())
                .contains("The voter may bring or send identification until Tuesday, November 10, 2026, 5:00 pm")
                .contains("notify the voter now");
    }

    @Test
    void never_writes_out_a_protected_address() {
        small.voter.confidential = true;
        small.envelope.address = "2 Oak St";
        assertThat(page()).contains("protected address").doesNotContain("Elm St", "Oak St");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NONE_FITS | No roll record matches. Search the other records and enter the result.",
                "NOT_ON_ROLL | A reviewer searched and found no record of this voter.",
                "SEVERAL_FIT | More than one roll record may be this voter. A reviewer must choose."
            })
    void says_where_there_is_no_voter_yet(VoterIdentityFact identity, String words) {
        small.link = new Link(identity, null, 0, List.of());
        assertThat(page()).contains(words);
    }

    @Test
    void says_of_one_who_fits_in_part_why_and_not_that_there_are_several() {
        String why =
                "One voter may match, but the dates of birth differ, as those of a parent, a child or a namesake would.";
        Candidate candidate = new Candidate(new VoterId("V1"), 0.6, List.of("Same last name."));
        small.link =
                new Link(VoterIdentityFact.SEVERAL_FIT, null, 0.6, List.of(why, "Same last name."), List.of(candidate));
        assertThat(page().replaceAll("\\s+", " "))
                .contains(why + " A reviewer must choose.")
                .contains("one or more records may be this voter; a reviewer must check")
                .doesNotContainIgnoringCase("more than one record");
    }

    @ParameterizedTest
    @CsvSource({
        "0.9999, almost certainly (99.9 %)",
        "0.99, almost certainly (99.0 %)",
        "0.95, likely (95.0 %)",
        "0.9, likely (90.0 %)",
        "0.5, possibly (50.0 %)",
        "0.2, possibly (20.0 %)",
        "0.4957, possibly (49.5 %)",
        "0.1, unlikely (10.0 %)"
    })
    void puts_a_word_before_the_figure(double probability, String words) {
        assertThat(MatchWords.words(probability)).isEqualTo(words);
    }

    @ParameterizedTest
    @EnumSource(Recommendation.class)
    void never_shows_a_mark_without_the_word(Recommendation recommendation) {
        assertThat(OutcomeSymbol.beside(recommendation)).endsWith(recommendation.words());
        assertThat(OutcomeSymbol.beside(recommendation).length()
                        > recommendation.words().length())
                .isEqualTo(recommendation.isDecided());
    }

    private void agrees() {
        small.records.recorded.add(new RecordedFact(
                Fact.SIGNATURE_COMPARISON,
                Set.of(SignatureComparisonFact.AGREES),
                Evidence.of(EvidenceSource.PERSON, "Agrees.")));
    }

    private String page() {
        CaseReport report = small.report(LocalDateTime.of(2026, 11, 4, 12, 0));
        return Explanation.of(report, small.records, small.pack.resolved(), "11/04/2026 12:00 pm")
                .replaceAll("\\s+", " ");
    }
}
