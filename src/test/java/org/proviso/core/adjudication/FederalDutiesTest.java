package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.FixedClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Consequence.Effect;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** What federal law asks of every assessment, over the bundled packs as the real loader reads them. */
class FederalDutiesTest {

    /** 52 USC 21082(c): ballots of court-extended hours are held apart, whatever becomes of them. */
    @ParameterizedTest
    @CsvSource({
        "extended_in_force, count",
        "extended_final, count",
        "extended_pending, research",
        "extended_set_aside, reject"
    })
    void holds_ballots_of_extended_hours_apart_through_every_outcome(String time, String recommendation) {
        Assessment assessment = example("vote_time=" + time);
        assertThat(assessment.heldApart()).isTrue();
        assertThat(assessment.outcome().recommendation().words()).isEqualTo(recommendation);
    }

    /** Decision case VA-02 (Va. Code 24.2-653.2): in line at the normal close is no extension voter. */
    @ParameterizedTest
    @ValueSource(strings = {"in_line_at_close", "within_hours", "after_close", "unknown"})
    void holds_no_other_ballot_apart(String time) {
        assertThat(example("vote_time=" + time).heldApart()).isFalse();
    }

    @Test
    void holds_them_apart_under_the_floor_and_where_nobody_could_source_the_rule() {
        assertThat(under(ChangedPack.of("us"), "vote_time=extended_final").heldApart())
                .isTrue();
        assertThat(under(ChangedPack.of("us").without(Rules.EXTENDED_HELD_APART), "vote_time=extended_final")
                        .heldApart())
                .isTrue();
        assertThat(under(ChangedPack.of("us").flag(Rules.EXTENDED_HELD_APART, false), "vote_time=extended_final")
                        .heldApart())
                .isFalse();
    }

    /** Decision cases US-03 and US-04 (52 USC 20507(e)(1), (3)): inactive is registered, moved or not. */
    @ParameterizedTest
    @ValueSource(strings = {"ballot=right_style", "ballot=right_style place=other_place"})
    void never_rejects_a_voter_for_being_inactive(String facts) {
        Assessment assessment = example("registration=inactive " + facts);
        assertThat(assessment.outcome()).isEqualTo(example(facts).outcome());
        assertThat(assessment.outcome().recommendation()).isEqualTo(Recommendation.COUNT);
        assertThat(assessment.outcome().reasons()).isEmpty();
    }

    @Test
    void has_no_reason_in_its_vocabulary_for_being_inactive() {
        assertThat(Reason.values()).extracting(Reason::code).noneMatch(code -> code.contains("inactive"));
    }

    /** 52 USC 10101(a)(2)(B), from memory: what does not matter to eligibility has no effect. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "field.zip=left_blank",
                "field.city=illegible",
                "field.id_last4=refused",
                "field.statements_ticked=left_blank",
                "field.date_of_birth=left_blank",
                "field.last_name=illegible",
                "official_signature=missing"
            })
    void gives_an_omission_that_does_not_matter_no_effect(String facts) {
        assertThat(example(facts).outcome())
                .isEqualTo(example("envelope=sealed").outcome());
    }

    /** 52 USC 21082(a)(4): found eligible under state law, the ballot shall be counted. */
    @Test
    void counts_a_case_in_which_nothing_stands_in_the_way() {
        assertThat(example("envelope=sealed").outcome().recommendation()).isEqualTo(Recommendation.COUNT);
    }

    /** 52 USC 21082(a)(5)(B): whatever does not count has a reason, and every reason has its words. */
    @Test
    void gives_the_reason_with_every_part_and_rejection() {
        ChangedPack pack = ChangedPack.of("example");
        for (String facts : new String[] {"registration=late", "ballot=other_style", "entitlement=federal_only"}) {
            Assessment assessment = Assessment.assess(
                    new ClearCase()
                            .with(facts)
                            .ballots("PRES CITY", "PRES TOWN")
                            .facts(),
                    new QuestionContext(pack.resolved(), new FixedClocks(AskStatus.OVER, true)));
            assertThat(assessment.outcome().recommendation()).isIn(Recommendation.REJECT, Recommendation.COUNT_IN_PART);
            assertThat(assessment.outcome().reasons())
                    .isNotEmpty()
                    .allSatisfy(
                            reason -> assertThat(pack.resolved().text(reason)).isPresent());
        }
    }

    /** Worked example 1 and 3 of the carry-over rule through a whole assessment. */
    @Test
    void carries_over_the_shared_contests_of_a_whole_case() {
        Assessment part = Assessment.assess(
                new ClearCase()
                        .with("ballot=other_style place=other_place")
                        .ballots("PRES HOUSE SENATE-7 HOUSE-20 SHERIFF CITY-A", "PRES HOUSE SENATE-8 HOUSE-21 SHERIFF")
                        .facts(),
                setting(ChangedPack.of("example")));
        assertThat(part.outcome().recommendation()).isEqualTo(Recommendation.COUNT_IN_PART);
        assertThat(part.outcome().contests()).containsExactly("PRES", "HOUSE", "SHERIFF");
        assertThat(part.outcome().reasons()).containsExactly(Reason.WRONG_STYLE);
    }

    @Test
    void rejects_an_empty_carry_over_before_the_voter_is_asked_for_anything() {
        Assessment none = Assessment.assess(
                new ClearCase()
                        .with("ballot=other_style identification=missing")
                        .ballots("CITY-A", "CITY-B")
                        .facts(),
                setting(ChangedPack.of("example")));
        assertThat(none.outcome().recommendation()).isEqualTo(Recommendation.REJECT);
        assertThat(none.outcome().reasons())
                .containsExactly(Reason.NO_CONTEST_IN_COMMON, Reason.WRONG_STYLE_RIGHT_PLACE, Reason.NO_IDENTIFICATION);
    }

    @Test
    void counts_federal_contests_only_by_a_federal_registration() {
        ChangedPack pack = ChangedPack.of("example")
                .follows(
                        Reason.FEDERAL_CONTESTS_ONLY,
                        new Consequence(Effect.IN_PART, ContestPolicy.FEDERAL_CONTESTS, null));
        assertThat(under(pack, "entitlement=federal_only").outcome().contests()).containsExactly("PRES", "HOUSE");
    }

    private static Assessment example(String facts) {
        return under(ChangedPack.of("example"), facts);
    }

    private static Assessment under(ChangedPack pack, String facts) {
        return Assessment.assess(new ClearCase().with(facts).facts(), setting(pack));
    }

    private static QuestionContext setting(ChangedPack pack) {
        return new QuestionContext(pack.resolved(), new FixedClocks(AskStatus.RUNNING, false));
    }
}
