package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.proviso.SampleCases;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.chain.Sha256;
import org.proviso.core.matching.Candidate;
import org.proviso.core.rules.ResolvedPack;

/** Every case of both samples, with its link presumed and confirmed, is kept, read back and made again. */
class SampleCasesKeptTest {

    static final List<String> SAMPLES = SampleCases.NAMES;

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void every_case_comes_out_the_same_from_what_was_kept(String sample) {
        SampleCases presumed = SampleCases.presumed(sample);
        madeAgain(presumed);
        madeAgain(presumed.confirmed());
        madeAgain(presumed.confirmed().at(presumed.asOf().plusDays(40)));
    }

    private static void madeAgain(SampleCases cases) {
        ResolvedPack pack = PackJson.read(PackJson.write(cases.book().pack()));
        List<CaseReport> reports = cases.reports();
        assertThat(reports).hasSizeGreaterThanOrEqualTo(60);
        for (CaseReport report : reports) {
            List<KeptAssessment> ways = KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf());
            assertThat(ways).extracting(KeptAssessment::way).containsExactly(AssessmentKind.values());
            for (KeptAssessment kept : ways) {
                Assessment assessment = kept.way().of(report);
                assertThat(FactsJson.read(kept.facts()).facts())
                        .as(report.envelope().envelopeNo().value())
                        .isEqualTo(assessment.facts());
                assertThat(kept.assessAgain(pack)).isEqualTo(kept);
                assertThat(kept.recommendation()).isEqualTo(assessment.outcome().recommendation());
            }
        }
    }

    /** Facts that are the same are the same text; facts that differ are not. */
    @ParameterizedTest
    @FieldSource("SAMPLES")
    void cases_with_other_facts_have_another_text(String sample) {
        Map<String, KeptFacts> byText = new HashMap<>();
        SampleCases presumed = SampleCases.presumed(sample);
        List.of(presumed, presumed.confirmed())
                .forEach(cases -> cases.reports()
                        .forEach(report -> KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf())
                                .forEach(kept -> {
                                    KeptFacts facts = FactsJson.read(kept.facts());
                                    assertThat(byText.getOrDefault(kept.facts(), facts))
                                            .isEqualTo(facts);
                                    byText.put(kept.facts(), facts);
                                })));
        assertThat(byText.values()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void every_link_comes_back_from_its_text(String sample) {
        SampleCases presumed = SampleCases.presumed(sample);
        assertThat(presumed.links().values()).allSatisfy(SampleCasesKeptTest::comesBack);
        assertThat(presumed.confirmed().links().values()).allSatisfy(SampleCasesKeptTest::comesBack);
    }

    @Test
    void the_candidates_of_a_link_come_back_with_the_same_figures() {
        comesBack(new Link(
                VoterIdentityFact.SEVERAL_FIT,
                null,
                1.0 / 3,
                List.of("Same \"surname\"."),
                List.of(
                        new Candidate(new VoterId("V-1"), 1.0 / 3, List.of("Same last name.", "Born a day apart.")),
                        new Candidate(new VoterId("V-2"), Double.MIN_VALUE, List.of()))));
    }

    private static void comesBack(Link link) {
        assertThat(LinkJson.read(
                        link.identity(),
                        link.voterId(),
                        link.probability(),
                        LinkJson.likeness(link),
                        LinkJson.candidates(link)))
                .isEqualTo(link);
    }

    @Test
    void the_content_says_from_what_it_was_made_and_answers_every_question() {
        SampleCases cases = SampleCases.presumed("tamarack-primary").confirmed();
        CaseReport report = cases.reports().get(0);
        KeptAssessment kept =
                KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf()).get(0);
        Map<String, Object> content = CanonicalJsonReader.object(kept.content());
        assertThat(content).containsOnlyKeys("made_from", "answers", "outcome", "asks", "held_apart");
        assertThat((List<?>) content.get("answers"))
                .hasSize(report.settled().answered().size());
        assertThat((Map<?, ?>) content.get("made_from"))
                .isEqualTo(Map.of(
                        "way",
                        "settled",
                        "facts",
                        Sha256.of(kept.facts()),
                        "as_of",
                        cases.asOf().toString(),
                        "pack",
                        cases.book().pack().hash(),
                        "engine_version",
                        (long) Assessment.ENGINE_VERSION));
        assertThat(kept.origins().areOfThisEngine()).isTrue();
        assertThat(kept.origins().areSaidBy(kept.content())).isTrue();
    }

    @Test
    void a_moment_that_no_table_keeps_is_refused() {
        SampleCases cases = SampleCases.presumed("tamarack-primary");
        CaseReport report = cases.reports().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KeptAssessment.of(
                        report, Map.of(), cases.book(), cases.asOf().plusNanos(1)))
                .withMessageContaining("finer than a microsecond");
    }
}
