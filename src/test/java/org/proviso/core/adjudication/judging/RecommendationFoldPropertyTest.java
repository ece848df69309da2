package org.proviso.core.adjudication.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.arbitraries.SetArbitrary;
import org.proviso.core.adjudication.FoldAnswers;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Reason;

/** What holds for every list of answers and every pair of ballots. */
class RecommendationFoldPropertyTest {

    private static final Set<Recommendation> COUNTS = Set.of(Recommendation.COUNT, Recommendation.COUNT_IN_PART);

    @Property
    void does_not_look_at_the_order_of_the_answers(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots, @ForAll long seed) {
        List<Answer> shuffled = new ArrayList<>(answers);
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(fold(shuffled, ballots)).isEqualTo(fold(answers, ballots));
    }

    @Property
    void never_gets_worse_with_more_time_to_cure(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots) {
        List<Answer> later = answers.stream().map(FoldAnswers::withMoreTime).toList();

        assertThat(worth(fold(later, ballots))).isGreaterThanOrEqualTo(worth(fold(answers, ballots)));
    }

    @Property
    void never_counts_beside_an_answer_that_stands_in_the_way(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots) {
        if (answers.stream().anyMatch(FoldAnswers::blocks)) {
            assertThat(fold(answers, ballots).recommendation()).isNotIn(COUNTS);
        }
    }

    @Property
    void rejects_only_for_what_nothing_can_cure_any_more(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots) {
        if (answers.stream().noneMatch(FoldAnswers::rejectsForGood)) {
            assertThat(fold(answers, ballots).recommendation()).isNotEqualTo(Recommendation.REJECT);
        }
    }

    @Property
    void counts_a_part_that_is_neither_empty_nor_whole(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots) {
        AssessmentOutcome outcome = fold(answers, ballots);
        boolean part = outcome.recommendation() == Recommendation.COUNT_IN_PART;

        assertThat(outcome.contests().isEmpty()).isNotEqualTo(part);
        assertThat(ballots.cast()).containsAll(outcome.contests());
        assertThat(part && outcome.contests().size() == ballots.cast().size()).isFalse();
    }

    @Property
    void gives_a_reason_for_every_rejection_and_part(
            @ForAll("lists") List<Answer> answers, @ForAll("ballots") BallotContests ballots) {
        AssessmentOutcome outcome = fold(answers, ballots);
        if (outcome.recommendation() == Recommendation.REJECT
                || outcome.recommendation() == Recommendation.COUNT_IN_PART) {
            assertThat(outcome.reasons()).isNotEmpty();
        }
        assertThat(outcome.reasons()).doesNotHaveDuplicates();
    }

    @Provide
    Arbitrary<List<Answer>> lists() {
        return Arbitraries.of(List.copyOf(FoldAnswers.BY_NAME.values())).list().ofMaxSize(8);
    }

    @Provide
    Arbitrary<BallotContests> ballots() {
        SetArbitrary<String> contests =
                Arbitraries.of("PRES", "HOUSE", "SHERIFF", "CITY").set();
        return Combinators.combine(contests.ofMinSize(1), contests)
                .as((cast, right) -> new BallotContests(cast, right, Set.of("PRES", "HOUSE")));
    }

    private static AssessmentOutcome fold(List<Answer> answers, BallotContests ballots) {
        return RecommendationFold.fold(answers, ballots, Reason::ordinal);
    }

    /** Rejected is least; what is still open is worth as much as anything it may turn into. */
    private static int worth(AssessmentOutcome outcome) {
        return switch (outcome.recommendation()) {
            case REJECT -> 0;
            case COUNT_IN_PART -> 1;
            default -> 2;
        };
    }
}
