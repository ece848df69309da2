package org.proviso.board.agenda;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.board.AgendaItem;
import org.proviso.board.Proposed;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;

/** Which envelopes are put to the vote together, and how the groups are numbered. */
class ConsentGroupsTest {

    private static Proposed proposed(DecidedAs outcome, Reason... reasons) {
        return new Proposed(outcome, List.of(reasons), "", "", "ada", null);
    }

    private static final Proposed LATE = proposed(DecidedAs.REJECT, Reason.REGISTERED_LATE, Reason.WRONG_PARTY_BALLOT);
    private static final Proposed PARTY = proposed(DecidedAs.REJECT, Reason.WRONG_PARTY_BALLOT);
    private static final Proposed STYLE = proposed(DecidedAs.COUNT_IN_PART, Reason.WRONG_STYLE);
    private static final Proposed COUNT = proposed(DecidedAs.COUNT);
    private static final Proposed COUNT_AFTER_ALL = proposed(DecidedAs.COUNT, Reason.REGISTERED_LATE);
    private static final Proposed DEPARTS =
            new Proposed(DecidedAs.COUNT, List.of(), "", "The clerk erred.", "ada", null);

    @Test
    void the_outcome_and_the_primary_reason_make_a_group_and_all_that_count_in_full_are_one() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(PARTY, LATE, STYLE, COUNT_AFTER_ALL, COUNT), Reason::ordinal);
        assertThat(groups.of(COUNT)).isEqualTo(1).isEqualTo(groups.of(COUNT_AFTER_ALL));
        assertThat(groups.of(STYLE)).isEqualTo(2);
        assertThat(groups.of(LATE)).isEqualTo(3);
        assertThat(groups.of(PARTY)).isEqualTo(4);
    }

    @Test
    void the_packs_precedence_of_reasons_orders_the_groups() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(LATE, PARTY), reason -> -reason.ordinal());
        assertThat(groups.of(PARTY)).isEqualTo(1);
        assertThat(groups.of(LATE)).isEqualTo(2);
    }

    @Test
    void a_group_keeps_its_number_when_others_come_later() {
        AgendaItem there = new AgendaItem("E-1", 1, DecidedAs.REJECT, Reason.WRONG_PARTY_BALLOT, 1, "eve", 0);
        ConsentGroups groups = new ConsentGroups(List.of(there));
        groups.add(List.of(COUNT, PARTY), Reason::ordinal);
        assertThat(groups.of(PARTY)).isEqualTo(1);
        assertThat(groups.of(COUNT)).isEqualTo(2);
    }

    @Test
    void a_proposal_that_departs_from_the_recommendation_stands_alone() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(DEPARTS, COUNT), Reason::ordinal);
        assertThat(groups.of(DEPARTS)).isNull();
        assertThat(groups.of(COUNT)).isEqualTo(1);
    }
}
