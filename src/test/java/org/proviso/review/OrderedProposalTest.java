package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.journey.Primary;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.decide.CourtOrderSettlementService;

/** A court's order that binds: nobody proposes against it, and a supervisor enters it. */
class OrderedProposalTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static RecordedCourtOrder ordered(TestOffice office, CourtOrder.Kind kind, EnvelopeKey key) {
        return accepted(as(
                "carl",
                () -> office.the(CourtOrderRecordService.class)
                        .record(new RecordCourtOrder(
                                PRIMARY,
                                kind,
                                "Tamarack County Circuit Court",
                                LocalDate.of(2026, 8, 6),
                                "One envelope",
                                CourtOrder.Status.IN_FORCE,
                                null,
                                Set.of(key.envelopeNo())))));
    }

    private static ActResult<EnvelopeCase> rejecting(TestOffice office, Primary primary, EnvelopeKey key) {
        return as(
                "ada",
                () -> office.the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key,
                                primary.now(key).version(),
                                DecisionOutcome.REJECT,
                                List.of(Reason.REGISTERED_LATE),
                                "Example Election Code (invented) 5.3 (2020)",
                                "")));
    }

    @OnBothDatabases
    void nobody_proposes_to_reject_what_a_court_ordered_to_count(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("registered_late");
        primary.reviewing(key).proposed();
        as(
                "ada",
                () -> accepted(office.the(ProposalService.class)
                        .withdraw(key, primary.now(key).version())));
        RecordedCourtOrder order = ordered(office, CourtOrder.Kind.COUNT, key);
        ActResult<EnvelopeCase> against = rejecting(office, primary, key);
        assertThat(why(against)).isEqualTo(Why.HELD_BY_COURT);
        assertThat(refused(against).words())
                .contains("Tamarack County Circuit Court")
                .contains("a supervisor enters it");
        assertThat(as(
                                "dora",
                                () -> accepted(office.the(CourtOrderSettlementService.class)
                                        .settle(key, primary.now(key).version(), order.orderNo())))
                        .state())
                .isEqualTo(CaseState.DECIDED);
    }

    @OnBothDatabases
    void a_proposal_from_before_the_order_is_not_agreed_to_and_goes_on_once_the_order_is_set_aside(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("registered_late");
        primary.reviewing(key).proposed();
        assertThat(primary.now(key).state()).isEqualTo(CaseState.PROPOSED);
        RecordedCourtOrder order = ordered(office, CourtOrder.Kind.COUNT, key);
        ProposalService proposals = office.the(ProposalService.class);
        int seen = primary.now(key).version();
        assertThat(primary.now(key).state()).isEqualTo(CaseState.PROPOSED);
        assertThat(why(as("ben", () -> proposals.secondReview(key, seen, true, ""))))
                .isEqualTo(Why.HELD_BY_COURT);
        as(
                "carl",
                () -> accepted(office.the(CourtOrderRecordService.class)
                        .change(PRIMARY, order.orderNo(), order.version(), CourtOrder.Status.SET_ASIDE)));
        as("ben", () -> accepted(proposals.secondReview(key, primary.now(key).version(), true, "")));
        assertThat(primary.now(key).state()).isEqualTo(CaseState.READY);
    }
}
