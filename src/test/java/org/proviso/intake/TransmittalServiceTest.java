package org.proviso.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;

import jakarta.validation.ConstraintViolationException;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.springframework.dao.OptimisticLockingFailureException;

/** The samples' primary came with ten returns. */
class TransmittalServiceTest {

    private static final String ID = LoadedOffice.ID;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static TransmittalService asClerk(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.signIn("ines");
        return office.the(TransmittalService.class);
    }

    private static RecordTransmittal bag(Integer issued, Integer returned) {
        LocalDate day = LocalDate.of(2026, 8, 4);
        return new RecordTransmittal(
                new ElectionId(ID), "Library", day, "B-1", "S-1", "S-2", 10, issued, 1, null, returned, null, null);
    }

    @OnADatabase
    void a_return_gets_the_next_line_and_is_one_of_the_elections(TestOffice office) {
        TransmittalService service = asClerk(office);
        assertThat(accepted(service.record(bag(5, 4))).lineNo()).isEqualTo(11);
        Transmittal kept = new Transmittal(
                "Library", LocalDate.of(2026, 8, 4), "B-1", "S-1", "S-2", 10, 5, 1, null, 4, null, null);
        assertThat(office.the(IntakeService.class).transmittals(new ElectionId(ID)))
                .hasSize(11)
                .endsWith(kept);
        assertThat(office.the(IntakeService.class).recordedTransmittals(new ElectionId(ID)))
                .endsWith(new RecordedTransmittal(11, 0, kept));
    }

    @OnADatabase
    void a_count_is_corrected_but_not_from_an_old_page(TestOffice office) {
        TransmittalService service = asClerk(office);
        accepted(service.record(bag(5, 4)));
        service.correct(11, 0, bag(5, 5));
        assertThatThrownBy(() -> service.correct(11, 0, bag(5, 3)))
                .isInstanceOf(OptimisticLockingFailureException.class)
                .hasMessageContaining("Library was changed by somebody else");
        RecordedTransmittal last = office.the(IntakeService.class)
                .recordedTransmittals(new ElectionId(ID))
                .get(10);
        assertThat(last.transmittal().returned()).isEqualTo(5);
        assertThat(last.version()).isEqualTo(1);
    }

    @OnADatabase
    void the_ledger_has_seals_and_counts_of_both(TestOffice office) {
        TransmittalService service = asClerk(office);
        accepted(service.record(bag(5, 4)));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("transmittal_recorded");
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("seal_in", "S-2")
                .containsEntry("returned", 4L)
                .doesNotContainKey("unused");
        accepted(service.correct(11, 0, bag(5, 5)));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("transmittal_corrected");
        assertThat(LoadedOffice.lastEntry(office).subject()).isEqualTo("transmittal-11");
        assertThat(LoadedOffice.lastEntry(office).payload()).containsEntry("returned", 5L);
    }

    @OnADatabase
    void a_count_that_is_missing_or_below_nothing_is_named(TestOffice office) {
        TransmittalService service = asClerk(office);
        assertThatThrownBy(() -> service.record(bag(null, 4)))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("issued");
        assertThatThrownBy(() -> service.record(bag(5, -1)))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("returned");
        assertThat(office.the(IntakeService.class).recordedTransmittals(new ElectionId(ID)))
                .hasSize(10);
    }

    @OnADatabase
    void a_decider_receives_no_bags(TestOffice office) {
        TransmittalService service = asClerk(office);
        Staff.hire(office, "dora", Role.DECIDER, Role.RELEASE_TEAM);
        Staff.signIn("dora");
        assertThatThrownBy(() -> service.record(bag(5, 4))).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> service.correct(1, 0, bag(5, 4))).isInstanceOf(NotPermittedException.class);
    }
}
