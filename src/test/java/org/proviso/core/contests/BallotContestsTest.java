package org.proviso.core.contests;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The worked examples of the carry-over rule, made from the rules of several states (none of them published): counted
 * are the contests of the ballot cast that the voter's own ballot also has, by office and district (K.S.A.
 * 25-3002(b)(3)). Georgia's rule, which counts a part only after 5 pm, cannot be said in a rule pack yet: there is no
 * rule that turns on the hour of voting, so its example is not tested here.
 */
class BallotContestsTest {

    private static final Set<String> P12 =
            contests("President", "US House 3", "State Senate 7", "State House 20", "County Sheriff", "City A Measure");
    private static final Set<String> P45 =
            contests("President", "US House 3", "State Senate 8", "State House 21", "County Sheriff");
    private static final Set<String> FEDERAL = contests("President", "US House 3");

    @Test
    void counts_three_of_six_when_two_districts_and_a_city_differ() {
        BallotContests ballots = new BallotContests(P12, P45, FEDERAL);

        assertThat(ballots.countedUnder(List.of(ContestPolicy.SHARED_CONTESTS)))
                .containsExactly("President", "US House 3", "County Sheriff");
        assertThat(ballots.notTheirs()).containsExactly("State Senate 7", "State House 20", "City A Measure");
        assertThat(ballots.missing()).containsExactly("State Senate 8", "State House 21");
    }

    @Test
    void drops_one_school_district_between_two_splits_of_a_precinct() {
        Set<String> cast = contests("President", "US House 3", "County Sheriff", "School District East");
        Set<String> right = contests("President", "US House 3", "County Sheriff", "School District West");
        BallotContests ballots = new BallotContests(cast, right, FEDERAL);

        assertThat(ballots.countedUnder(List.of(ContestPolicy.SHARED_CONTESTS)))
                .containsExactly("President", "US House 3", "County Sheriff");
        assertThat(ballots.notTheirs()).containsExactly("School District East");
        assertThat(ballots.missing()).containsExactly("School District West");
    }

    @Test
    void counts_only_what_every_policy_leaves() {
        BallotContests ballots = new BallotContests(P12, P45, contests("President", "US Senate"));

        assertThat(ballots.countedUnder(List.of(ContestPolicy.FEDERAL_CONTESTS)))
                .containsExactly("President");
        assertThat(ballots.countedUnder(List.of(ContestPolicy.SHARED_CONTESTS, ContestPolicy.FEDERAL_CONTESTS)))
                .containsExactly("President");
        assertThat(ballots.countedUnder(List.of())).containsExactlyElementsOf(P12);
    }

    private static Set<String> contests(String... names) {
        return new LinkedHashSet<>(List.of(names));
    }
}
