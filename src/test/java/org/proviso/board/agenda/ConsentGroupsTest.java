package org.proviso.board.agenda;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.board.AgendaItem;
import org.proviso.board.ProposalForDecision;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/** Which envelopes are put to the vote together, and how the groups are numbered. */
class ConsentGroupsTest {

    private static ProposalForDecision proposed(DecisionOutcome outcome, Reason... reasons) {
        return new ProposalForDecision(outcome, List.of(reasons), "", "", new UserName("ada"), null);
    }

    private static final ProposalForDecision LATE =
            proposed(DecisionOutcome.REJECT, Reason.REGISTERED_LATE, Reason.WRONG_PARTY_BALLOT);
    private static final ProposalForDecision PARTY = proposed(DecisionOutcome.REJECT, Reason.WRONG_PARTY_BALLOT);
    private static final ProposalForDecision STYLE = proposed(DecisionOutcome.COUNT_IN_PART, Reason.WRONG_STYLE);
    private static final ProposalForDecision COUNT = proposed(DecisionOutcome.COUNT);
    private static final ProposalForDecision COUNT_AFTER_ALL = proposed(DecisionOutcome.COUNT, Reason.REGISTERED_LATE);
    private static final ProposalForDecision DEPARTS = new ProposalForDecision(
            DecisionOutcome.COUNT, List.of(), "", "The clerk erred.", new UserName("ada"), null);

    @Test
    void the_outcome_and_the_primary_reason_make_a_group_and_all_that_count_in_full_are_one() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(PARTY, LATE, STYLE, COUNT_AFTER_ALL, COUNT), Reason::ordinal);
        assertThat(groups.groupNumber(COUNT)).isEqualTo(1).isEqualTo(groups.groupNumber(COUNT_AFTER_ALL));
        assertThat(groups.groupNumber(STYLE)).isEqualTo(2);
        assertThat(groups.groupNumber(LATE)).isEqualTo(3);
        assertThat(groups.groupNumber(PARTY)).isEqualTo(4);
    }

    @Test
    void the_packs_precedence_of_reasons_orders_the_groups() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(LATE, PARTY), reason -> -reason.ordinal());
        assertThat(groups.groupNumber(PARTY)).isEqualTo(1);
        assertThat(groups.groupNumber(LATE)).isEqualTo(2);
    }

    @Test
    void a_group_keeps_its_number_when_others_come_later() {
        AgendaItem there = new AgendaItem(
                new EnvelopeNumber("E-1"), 1, DecisionOutcome.REJECT, Reason.WRONG_PARTY_BALLOT, 1, "eve", 0);
        ConsentGroups groups = new ConsentGroups(List.of(there));
        groups.add(List.of(COUNT, PARTY), Reason::ordinal);
        assertThat(groups.groupNumber(PARTY)).isEqualTo(1);
        assertThat(groups.groupNumber(COUNT)).isEqualTo(2);
    }

    @Test
    void a_proposal_that_departs_from_the_recommendation_stands_alone() {
        ConsentGroups groups = new ConsentGroups(List.of());
        groups.add(List.of(DEPARTS, COUNT), Reason::ordinal);
        assertThat(groups.groupNumber(DEPARTS)).isNull();
        assertThat(groups.groupNumber(COUNT)).isEqualTo(1);
    }
}
