package org.proviso.intake.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Primary;

/** The verdict on what a voter brought: by its stamp, and by what the case still asks for. */
class CureVerdictTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);

    private record Counter(TestOffice office, Primary primary, EnvelopeKey key) {

        static Counter in(TestOffice office) {
            Primary primary = Primary.loaded(office);
            Staff.hire(office, "ines", Role.INTAKE);
            return new Counter(office, primary, primary.envelope("no_id"));
        }

        CureVerdict brought(Ask ask, LocalDateTime stamp) {
            accepted(as(
                    "ines",
                    () -> office.the(CureService.class)
                            .record(new RecordCure(ELECTION, key.envelopeNo(), ask, stamp, "Shown at the counter."))));
            return as(
                    "ines", () -> office.the(CureLookupService.class).verdict(ELECTION, key.envelopeNo(), ask, stamp));
        }
    }

    @OnADatabase
    void what_comes_in_time_and_is_all_that_is_asked_leaves_nothing_owed(TestOffice office) {
        Counter counter = Counter.in(office);
        assertThat(as(
                        "ines",
                        () -> office.the(CureLookupService.class)
                                .owed(ELECTION, counter.key().envelopeNo())))
                .singleElement()
                .asString()
                .startsWith("The voter may still bring or send identification, until ");
        CureVerdict verdict = counter.brought(Ask.IDENTIFICATION, LocalDateTime.of(2026, 8, 5, 11, 0));
        assertThat(verdict.kind()).isEqualTo(CureVerdict.Kind.IN_TIME);
        assertThat(verdict.because()).endsWith("The voter owes nothing more.");
        assertThat(verdict.owed()).isEmpty();
    }

    @OnADatabase
    void what_comes_in_time_and_was_not_what_is_missing_is_not_enough(TestOffice office) {
        CureVerdict verdict = Counter.in(office).brought(Ask.SIGNATURE, LocalDateTime.of(2026, 8, 5, 11, 0));
        assertThat(verdict.kind()).isEqualTo(CureVerdict.Kind.NOT_ENOUGH);
        assertThat(verdict.owed()).singleElement().asString().contains("identification");
    }

    @OnADatabase
    void what_is_stamped_after_the_deadline_is_too_late_whenever_it_is_keyed(TestOffice office) {
        Counter counter = Counter.in(office);
        counter.primary().at(12, 9, 0);
        CureVerdict verdict = counter.brought(Ask.IDENTIFICATION, LocalDateTime.of(2026, 8, 13, 9, 0));
        assertThat(verdict.kind()).isEqualTo(CureVerdict.Kind.TOO_LATE);
        assertThat(verdict.because()).contains("the deadline was ");
        assertThat(counter.brought(Ask.IDENTIFICATION, LocalDateTime.of(2026, 8, 5, 9, 0))
                        .kind())
                .as("the stamp decides")
                .isEqualTo(CureVerdict.Kind.IN_TIME);
    }
}
