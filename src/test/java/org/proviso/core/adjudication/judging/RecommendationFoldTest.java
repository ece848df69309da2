package org.proviso.core.adjudication.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.adjudication.FoldAnswers.answers;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.adjudication.ClearCase;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Reason;

/** The order of the fold, each row against all that come after it. */
class RecommendationFoldTest {

    private static final BallotContests SOME_SHARED = ClearCase.contests("PRES HOUSE CITY", "PRES HOUSE TOWN");
    private static final BallotContests ALL_SHARED = ClearCase.contests("PRES HOUSE", "PRES HOUSE TOWN");
    private static final BallotContests NONE_SHARED = ClearCase.contests("CITY", "TOWN");

    @ParameterizedTest
    @CsvSource({
        "end sent_on reject open waits part clear, administrative end",
        "sent_on reject open waits part clear, sent on",
        "reject open waits part clear, reject",
        "ran_out open waits part clear, reject",
        "open waits part clear, research",
        "waits part clear, wait for the voter",
        "part_waits clear, wait for the voter",
        "part part_ran_out clear, count in part",
        "part federal clear, count in part",
        "harmless clear not_asked, count",
        "clear not_asked, count",
        "'', count"
    })
    void takes_the_first_that_holds(String answers, String recommendation) {
        AssessmentOutcome outcome = fold(answers, SOME_SHARED);
        assertThat(outcome.recommendation().words()).isEqualTo(recommendation);
        assertThat(outcome.recommendation().isDecided())
                .isEqualTo(List.of("count", "count in part", "reject").contains(recommendation));
    }

    @Test
    void counts_in_part_what_both_policies_leave() {
        assertThat(fold("part", SOME_SHARED).contests()).containsExactly("PRES", "HOUSE");
        assertThat(fold("part federal", ClearCase.contests("PRES TOWN CITY", "PRES TOWN"))
                        .contests())
                .containsExactly("PRES");
        assertThat(fold("reject part", SOME_SHARED).contests()).isEmpty();
    }

    @Test
    void counts_in_full_when_every_contest_of_the_ballot_is_the_voters_own() {
        AssessmentOutcome outcome = fold("part", ALL_SHARED);

        assertThat(outcome.recommendation()).isEqualTo(Recommendation.COUNT);
        assertThat(outcome.contests()).isEmpty();
        assertThat(outcome.reasons()).containsExactly(Reason.WRONG_STYLE);
    }

    @ParameterizedTest
    @CsvSource({"part", "part open", "part waits", "part_waits"})
    void rejects_when_nothing_is_in_common_before_anything_open_or_any_wait(String answers) {
        AssessmentOutcome outcome = fold(answers, NONE_SHARED);

        assertThat(outcome.recommendation()).isEqualTo(Recommendation.REJECT);
        assertThat(outcome.reasons()).contains(Reason.NO_CONTEST_IN_COMMON);
    }

    @Test
    void does_not_look_at_contests_where_no_answer_cuts_the_ballot() {
        assertThat(fold("clear", NONE_SHARED).recommendation()).isEqualTo(Recommendation.COUNT);
        assertThat(fold("clear", null).recommendation()).isEqualTo(Recommendation.COUNT);
    }

    @Test
    void researches_the_right_ballot_before_it_cuts_one() {
        assertThat(fold("part", null).recommendation()).isEqualTo(Recommendation.RESEARCH);
        assertThat(fold("part waits", null).recommendation()).isEqualTo(Recommendation.RESEARCH);
        assertThat(fold("part reject", null).recommendation()).isEqualTo(Recommendation.REJECT);
    }

    @Test
    void names_every_reason_once_in_the_order_of_the_pack() {
        assertThat(fold("federal ran_out reject part reject harmless", SOME_SHARED)
                        .reasons())
                .containsExactly(
                        Reason.NOT_REGISTERED,
                        Reason.WRONG_STYLE,
                        Reason.FEDERAL_CONTESTS_ONLY,
                        Reason.NO_IDENTIFICATION);
    }

    /** The survey asks for an empty intersection before it asks for the wrong style. */
    @Test
    void names_an_empty_intersection_at_its_own_place_in_the_order() {
        assertThat(fold("part federal", NONE_SHARED).reasons())
                .containsExactly(Reason.NO_CONTEST_IN_COMMON, Reason.WRONG_STYLE, Reason.FEDERAL_CONTESTS_ONLY);
    }

    private static AssessmentOutcome fold(String answers, BallotContests contests) {
        return RecommendationFold.fold(
                answers(answers), contests, ChangedPack.of("example").resolved()::precedence);
    }
}
