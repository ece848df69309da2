package org.proviso.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DatedValue;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;
import org.proviso.files.packs.RulePacks;

/** The packs of the states against the deadlines that states and counties published; each row names its source. */
class StatePacksTest {

    private static final Set<String> STATES = Set.of(
            ("al ak az ar ca co ct de dc fl ga hi id il in ia ks ky la me md ma mi mn ms mo mt ne nv nh nj nm ny nc nd"
                            + " oh ok or pa ri sc sd tn tx ut vt va wa wv wi wy")
                    .split(" "));

    @TestFactory
    Stream<DynamicTest> says_what_was_published() {
        return PackReport.rows().stream()
                .filter(row -> row.certain() && !PackReport.reasons().containsKey(row.key()))
                .map(row -> dynamicTest(
                        row.key(), () -> assertThat(row.said()).as(row.source()).containsExactly(row.published())));
    }

    /** A row that disagrees is listed with its reason, and no row is listed that agrees. */
    @Test
    void lists_every_row_that_disagrees_with_the_reason() {
        Set<String> disagreeing = PackReport.rows().stream()
                .filter(row -> !row.agrees())
                .map(PublishedRow::key)
                .collect(Collectors.toSet());

        assertThat(PackReport.reasons().keySet()).isEqualTo(disagreeing);
    }

    @Test
    void agrees_with_at_least_95_of_100_rows_that_are_certain() {
        List<PublishedRow> certain =
                PackReport.rows().stream().filter(PublishedRow::certain).toList();
        long agreeing = certain.stream().filter(PublishedRow::agrees).count();

        assertThat(certain).hasSizeGreaterThan(240);
        assertThat(agreeing * 100).isGreaterThanOrEqualTo(certain.size() * 95L);
    }

    @Test
    void has_a_pack_for_every_state_and_the_district() {
        assertThat(PackReport.stateNames())
                .containsExactlyInAnyOrderElementsOf(
                        STATES.stream().map(state -> "us-" + state).toList());
    }

    @ParameterizedTest
    @MethodSource("org.proviso.packs.PackReport#stateNames")
    void says_that_it_is_illustrative_and_how_it_knows(String name) {
        RulePack pack = RulePacks.load(name);

        assertThat(pack.id()).isEqualTo(name);
        assertThat(pack.caution())
                .contains("Illustrative")
                .contains("counsel govern")
                .contains("People decide");
        pack.values()
                .forEach((rule, values) -> values.forEach(value -> {
                    assertThat(value.basis()).as(rule.key()).isNotEqualTo(Basis.INVENTED);
                    assertThat(value.reference().title()).as(rule.key()).isNotBlank();
                    assertThat(value.basis() == Basis.READ
                                    && value.reference().title().contains("from memory"))
                            .as(rule.key() + " is read, so not from memory")
                            .isFalse();
                }));
    }

    /** What the issue asks every pack to speak of, if only by saying that nobody knows. */
    @ParameterizedTest
    @MethodSource("org.proviso.packs.PackReport#stateNames")
    void speaks_of_every_parameter_that_a_state_must_have(String name) {
        RulePack pack = RulePacks.load(name);
        List<Rule> asked = List.of(
                Rules.REGISTER_IN_PERSON,
                Rules.REGISTER_ONLINE,
                Rules.REGISTER_MAIL_POSTMARK,
                Rules.REGISTER_MAIL_RECEIVED,
                Rules.SAME_DAY,
                Rules.ID_REQUIRED_OF,
                Rules.DECISION,
                Rules.CERTIFICATION,
                StateRules.PROVISIONAL_ISSUED);

        for (Rule rule : asked) {
            for (int year = 2016; year <= 2026; year += 2) {
                LocalDate electionDay = LocalDate.of(year, 11, 3);
                assertThat(pack.inForce(rule, electionDay))
                        .as(rule.key() + " in " + year)
                        .isPresent();
            }
        }
    }

    @Test
    void tells_in_the_docs_how_much_was_read_and_what_disagrees() throws IOException {
        String docs = Files.readString(Path.of("docs", "rules.md"));

        assertThat(docs)
                .contains(PackReport.states())
                .contains(PackReport.agreement())
                .contains(PackReport.disagreements());
    }

    @Test
    void says_which_states_issue_no_provisional_ballots() {
        assertThat(PackReport.stateNames().stream()
                        .filter(name -> RulePacks.load(name)
                                .inForce(StateRules.PROVISIONAL_ISSUED, LocalDate.of(2026, 11, 3))
                                .map(DatedValue::value)
                                .orElseThrow()
                                .spelled()
                                .equals("not_issued"))
                        .toList())
                .containsExactly("us-id", "us-mn", "us-nd", "us-nh");
    }
}
