package org.proviso.core.adjudication.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.BallotStyle;
import org.proviso.core.Contest;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;

/** A primary with two party ballots in precinct 1 and one precinct whose voting location is not named. */
class BallotCatalogTest {

    private static final BallotStyle RED = new BallotStyle("1-RED", "Red", Set.of("HOUSE", "SHERIFF"));
    private static final BallotStyle BLUE = new BallotStyle("1-BLUE", "Blue", Set.of("SHERIFF", "HOUSE"));
    private static final BallotStyle ALL = new BallotStyle("2-ALL", "", Set.of("SHERIFF"));
    private static final PrecinctPart ONE_RED = new PrecinctPart("1", "", "1-RED", "Red", "Town Hall");
    private static final PrecinctPart ONE_BLUE = new PrecinctPart("1", "", "1-BLUE", "Blue", "Town Hall");
    private static final PrecinctPart TWO = new PrecinctPart("2", "X", "2-ALL", "", "Library");
    private static final PrecinctPart THREE = new PrecinctPart("3", "", "2-ALL", "", "");

    private final BallotCatalog ballots = new BallotCatalog(
            List.of(
                    new Contest("HOUSE", "Representative in Congress", "CD-1", Contest.Level.FEDERAL),
                    new Contest("SHERIFF", "County Sheriff", "County", Contest.Level.COUNTY)),
            List.of(RED, BLUE, ALL),
            List.of(ONE_RED, ONE_BLUE, TWO, THREE));

    @Test
    void finds_a_style_by_its_name_and_by_exactly_its_contests() {
        assertThat(ballots.style("2-ALL")).contains(ALL);
        assertThat(ballots.style("9")).isEmpty();
        assertThat(ballots.styles()).containsExactlyInAnyOrder(RED, BLUE, ALL);
        assertThat(ballots.stylesWith(Set.of("HOUSE", "SHERIFF"))).containsExactly("1-BLUE", "1-RED");
        assertThat(ballots.stylesWith(Set.of("HOUSE"))).isEmpty();
    }

    @Test
    void gives_a_precinct_part_a_row_for_each_party() {
        assertThat(ballots.rows(new PrecinctId("1", ""))).containsExactly(ONE_RED, ONE_BLUE);
        assertThat(ballots.rows(new PrecinctId("2", "X"))).containsExactly(TWO);
        assertThat(ballots.rows(new PrecinctId("2", ""))).isEmpty();
        assertThat(ballots.parts()).containsExactlyInAnyOrder(ONE_RED, ONE_BLUE, TWO, THREE);
    }

    @Test
    void names_each_voting_location_once_and_none_that_is_not_given() {
        assertThat(ballots.votingLocations()).containsExactly("Library", "Town Hall");
    }

    @Test
    void knows_which_contests_are_for_federal_office() {
        assertThat(ballots.federalContests()).containsExactly("HOUSE");
    }

    @Test
    void calls_a_contest_by_its_title_and_one_that_is_not_listed_by_its_id() {
        assertThat(ballots.contestTitle("SHERIFF")).isEqualTo("County Sheriff");
        assertThat(ballots.contestTitle("CORONER")).isEqualTo("CORONER");
    }
}
