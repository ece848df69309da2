package org.proviso.election.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import jakarta.validation.ConstraintViolationException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Kind;
import org.proviso.core.CourtOrder.Status;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.intake.LoadedOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;

/** The samples' primary came with one order, that extended the hours. */
class CourtOrderRecordServiceTest {

    private static final String ID = LoadedOffice.ID;
    private static final LocalDateTime NINE = LocalDateTime.of(2026, 8, 4, 21, 0);

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static CourtOrderRecordService asSupervisor(TestOffice office) {
        LoadedOffice.primary(office);
        return office.the(CourtOrderRecordService.class);
    }

    private static RecordCourtOrder order(Kind kind, @Nullable LocalDateTime until, EnvelopeNumber... envelopes) {
        LocalDate day = LocalDate.of(2026, 8, 6);
        return new RecordCourtOrder(
                new ElectionId(ID),
                kind,
                "Circuit Court",
                day,
                "Petition of Craig Okafor",
                Status.PENDING,
                until,
                Set.of(envelopes));
    }

    private static List<CourtOrder> orders(TestOffice office) {
        return office.the(ElectionService.class)
                .find(new ElectionId(ID))
                .orElseThrow()
                .orders();
    }

    @OnADatabase
    void an_order_gets_the_next_number_and_is_one_of_the_elections_orders(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        RecordCourtOrder hold = order(Kind.HOLD, null, new EnvelopeNumber("P-1001"), new EnvelopeNumber("P-1002"));
        assertThat(accepted(service.record(hold)).orderNo()).isEqualTo(2);
        assertThat(accepted(service.record(order(Kind.EXTEND, NINE))).orderNo()).isEqualTo(3);
        assertThat(orders(office)).hasSize(3).contains(hold.order());
        assertThat(service.all(new ElectionId(ID)))
                .extracting(RecordedCourtOrder::orderNo)
                .containsExactly(1, 2, 3);
    }

    @OnADatabase
    void an_order_is_set_aside_later_but_not_by_somebody_with_an_old_page(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        int number = accepted(service.record(order(Kind.COUNT, null, new EnvelopeNumber("P-1001"))))
                .orderNo();
        accepted(service.change(new ElectionId(ID), number, 0, Status.IN_FORCE));
        assertThatThrownBy(() -> service.change(new ElectionId(ID), number, 0, Status.FINAL))
                .isInstanceOf(OptimisticLockingFailureException.class)
                .hasMessageContaining("changed by somebody else");
        accepted(service.change(new ElectionId(ID), number, 1, Status.SET_ASIDE));
        assertThat(service.all(new ElectionId(ID)).get(1).version()).isEqualTo(2);
        assertThat(orders(office).get(1).standing()).isEqualTo(Status.SET_ASIDE);
    }

    @OnADatabase
    void the_ledger_has_what_was_ordered_and_no_name(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        accepted(service.record(order(Kind.HOLD, null, new EnvelopeNumber("P-1002"), new EnvelopeNumber("P-1001"))));
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("order_recorded");
        assertThat(entry.subject()).isEqualTo("order-2");
        assertThat(entry.payload())
                .isEqualTo(Map.of(
                        "kind", "hold",
                        "standing", "pending",
                        "date", "2026-08-06",
                        "until", "",
                        "envelopes", List.of("P-1001", "P-1002")));
        accepted(service.change(new ElectionId(ID), 2, 0, Status.FINAL));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("order_standing_changed");
        assertThat(LoadedOffice.lastEntry(office).payload()).containsEntry("standing", "final");
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(ID)))
                        .isWhole())
                .isTrue();
    }

    @OnADatabase
    void an_order_about_an_envelope_that_never_came_is_refused_by_its_number(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        assertThat(refused(service.record(order(
                        Kind.COUNT,
                        null,
                        new EnvelopeNumber("P-1001"),
                        new EnvelopeNumber("P-7777"),
                        new EnvelopeNumber("P-6666")))))
                .returns(Why.NO_SUCH_ENVELOPE, Refusal::why)
                .returns("envelopeNos", Refusal::field)
                .extracting(Refusal::words)
                .asString()
                .contains("no envelope P-6666, P-7777");
        assertThat(orders(office)).hasSize(1);
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("election_loaded");
    }

    @OnADatabase
    void what_an_order_of_its_kind_cannot_say_is_named(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        assertThatThrownBy(() -> service.record(order(Kind.COUNT, NINE, new EnvelopeNumber("P-1001"))))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("only an order that extends the hours says until when");
        assertThatThrownBy(() -> service.record(order(Kind.EXTEND, null)))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("an order that extends the hours says until when");
        assertThatThrownBy(() -> service.record(order(Kind.REJECT, null)))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("names its envelopes");
        assertThat(orders(office)).hasSize(1);
        assertThat(refused(service.record(order(Kind.OPEN, null, new EnvelopeNumber("P-1001")))))
                .as("nothing would follow from it")
                .returns(Why.NO_SUCH_ORDER, Refusal::why)
                .returns("kind", Refusal::field);
        accepted(service.record(order(Kind.PRESERVE, null)));
        assertThat(orders(office)).hasSize(2);
    }

    @OnADatabase
    void only_a_supervisor_records_orders(TestOffice office) {
        CourtOrderRecordService service = asSupervisor(office);
        Staff.hire(office, "ada", Role.REVIEWER, Role.INTAKE, Role.DECIDER);
        Staff.signIn("ada");
        assertThatThrownBy(() -> service.record(order(Kind.HOLD, null, new EnvelopeNumber("P-1001"))))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> service.change(new ElectionId(ID), 1, 0, Status.FINAL))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> service.all(new ElectionId(ID))).isInstanceOf(NotPermittedException.class);
    }
}
