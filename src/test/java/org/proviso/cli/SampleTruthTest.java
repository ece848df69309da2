package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.election.ElectionFolder;

/**
 * The sample elections against what the generator says of each envelope. The generator knows nothing of the rules'
 * code; the outlook is compared strictly, so that every "research" is a difference.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SampleTruthTest {

    /** How many envelopes each sample holds: a test that looked at fewer has looked at nothing. */
    private static final Map<String, Integer> ENVELOPES = Map.of("tamarack-general", 240, "tamarack-primary", 60);

    private static final Path SAMPLES = Path.of("sample-cases");

    private record Truth(
            EnvelopeNumber envelopeNo, String voterId, String outcome, String contests, String signature) {}

    private record Compared(Truth truth, CaseReport report) {

        String outlook() {
            return report.outlook().outcome().recommendation().words();
        }

        boolean same() {
            return outlook().equals(truth.outcome())
                    && (!outlook().equals("count in part")
                            || contests(truth.contests()).equals(counted()));
        }

        boolean byAnotherHand() {
            return truth.signature().equals("another_hand");
        }

        private Set<String> counted() {
            return new LinkedHashSet<>(report.outlook().outcome().contests());
        }

        private static Set<String> contests(String cell) {
            return new LinkedHashSet<>(List.of(cell.split(";")));
        }
    }

    private Map<String, List<Compared>> elections;

    @BeforeAll
    void adjudicate() {
        elections =
                ENVELOPES.keySet().stream().collect(Collectors.toMap(Function.identity(), SampleTruthTest::compare));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void every_envelope_of_the_sample_is_compared(String election) {
        assertThat(elections.get(election))
                .hasSize(ENVELOPES.get(election))
                .allSatisfy(compared -> assertThat(compared.report())
                        .as(compared.truth().envelopeNo().value())
                        .isNotNull());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void no_outlook_counts_a_ballot_that_must_not_count(String election) {
        assertThat(elections.get(election))
                .filteredOn(compared -> compared.outlook().startsWith("count") && !compared.byAnotherHand())
                .isNotEmpty()
                .allSatisfy(compared -> assertThat(compared.truth().outcome())
                        .as(compared.truth().envelopeNo().value())
                        .startsWith("count"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void no_outlook_rejects_a_ballot_that_counts(String election) {
        assertThat(elections.get(election))
                .filteredOn(compared -> compared.outlook().equals("reject"))
                .isNotEmpty()
                .allSatisfy(compared -> assertThat(compared.truth().outcome())
                        .as(compared.truth().envelopeNo().value())
                        .doesNotStartWith("count"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void every_presumed_link_is_the_voter(String election) {
        assertThat(elections.get(election))
                .filteredOn(compared -> compared.report().link().voterId() != null)
                .isNotEmpty()
                .allSatisfy(
                        compared -> assertThat(Key.text(compared.report().link().voterId()))
                                .as(compared.truth().envelopeNo().value())
                                .isEqualTo(compared.truth().voterId()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void where_outlook_and_truth_differ_it_is_research_or_another_hand(String election) {
        assertThat(elections.get(election))
                .filteredOn(compared -> !compared.same() && !compared.byAnotherHand())
                .allSatisfy(compared -> assertThat(compared.outlook())
                        .as(compared.truth().envelopeNo().value())
                        .isEqualTo("research"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarack-general", "tamarack-primary"})
    void at_most_15_in_100_are_research(String election) {
        List<Compared> all = elections.get(election);
        long research = all.stream()
                .filter(compared -> compared.outlook().equals("research"))
                .count();
        assertThat(research * 100.0 / all.size()).isLessThanOrEqualTo(15);
    }

    @Test
    void the_outlook_equals_the_truth_on_95_of_100_of_the_general_election() {
        List<Compared> all = elections.get("tamarack-general");
        long same = all.stream().filter(Compared::same).count();
        assertThat(same * 100.0 / all.size()).isGreaterThanOrEqualTo(95);
    }

    @Test
    void nothing_is_recommended_to_count_before_a_person_has_confirmed_and_compared() {
        elections
                .values()
                .forEach(all -> assertThat(all)
                        .extracting(compared -> compared.report().recommendation())
                        .doesNotContain(Recommendation.COUNT, Recommendation.COUNT_IN_PART));
    }

    @Test
    void the_envelopes_of_extended_hours_are_held_apart() {
        long apart = elections.get("tamarack-primary").stream()
                .filter(compared -> compared.report().presumed().heldApart())
                .count();
        assertThat(apart).isEqualTo(12);
    }

    private static List<Compared> compare(String name) {
        ElectionFolder folder = ElectionFolder.read(SAMPLES.resolve(name));
        LocalDateTime noon = folder.election().date().plusDays(1).atTime(12, 0);
        Map<EnvelopeNumber, CaseReport> reports = AdjudicationRun.of(folder, noon, 2).cases().stream()
                .collect(Collectors.toMap(report -> report.envelope().envelopeNo(), Function.identity()));
        List<Compared> compared = new ArrayList<>();
        truths(name).forEach(truth -> compared.add(new Compared(truth, reports.get(truth.envelopeNo()))));
        assertThat(compared).hasSameSizeAs(reports.values()).hasSize(ENVELOPES.get(name));
        return compared;
    }

    private static List<Truth> truths(String name) {
        CsvColumns columns =
                CsvColumns.of("envelope_no", "voter_id", "outcome", "contests", "signature", "scenario", "note");
        return CsvTable.read(
                        SAMPLES.resolve("truth").resolve(name + ".csv"),
                        columns,
                        warning -> {},
                        row -> new Truth(
                                new EnvelopeNumber(row.text("envelope_no")),
                                row.text("voter_id"),
                                row.text("outcome"),
                                row.text("contests"),
                                row.text("signature")))
                .values();
    }
}
