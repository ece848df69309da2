package org.proviso.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.intake.desk.EnvelopeFilter.ALL;
import static org.proviso.intake.desk.EnvelopeFilter.DIFFERING;
import static org.proviso.intake.desk.EnvelopeFilter.KEYED_ONCE;
import static org.proviso.intake.desk.EnvelopeFilter.NOT_KEYED;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.desk.CureLookupService;
import org.proviso.intake.desk.EnvelopeFilter;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.desk.FoundEnvelope;
import org.proviso.intake.desk.IntakeEnvelopeRow;
import org.proviso.intake.desk.LocationReturn;
import org.proviso.intake.desk.LocationReturnService;
import org.proviso.intake.desk.NextEnvelopeService;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.keying.SaveKeyingDraft;

/** The primary's 60 envelopes came keyed; Ines receives and keys P-2001, Otto keys it a second time. */
class IntakeListsTest {

    private static final String ID = LoadedOffice.ID;

    private final Keying keying = new Keying();

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private void received(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.hire(office, "otto", Role.INTAKE);
        Staff.signIn("ines");
        accepted(office.the(ReceivingService.class).receive(keying.receive()));
    }

    private static int count(TestOffice office, EnvelopeFilter filter) {
        return office.the(EnvelopeListService.class).count(new ElectionId(ID), filter, "");
    }

    private static List<EnvelopeNumber> numbers(TestOffice office, EnvelopeFilter filter, String sought) {
        return office.the(EnvelopeListService.class).page(new ElectionId(ID), filter, sought, 0, 100).stream()
                .map(IntakeEnvelopeRow::envelopeNo)
                .toList();
    }

    @OnBothDatabases
    void an_envelope_goes_from_list_to_list_as_it_is_keyed(TestOffice office) {
        received(office);
        assertThat(numbers(office, NOT_KEYED, "")).containsExactly(new EnvelopeNumber(Keying.NUMBER));
        assertThat(count(office, KEYED_ONCE)).isEqualTo(60);
        accepted(office.the(KeyingService.class).handIn(keying.finish()));
        assertThat(count(office, NOT_KEYED)).isZero();
        assertThat(count(office, KEYED_ONCE)).isEqualTo(61);
        Staff.signIn("otto");
        keying.lastName = "Keel";
        keying.draftVersion = accepted(office.the(KeyingService.class)
                .saveDraft(new SaveKeyingDraft(
                        new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER), 0, Map.of("last_name", "Keel"))));
        accepted(office.the(KeyingService.class).handIn(keying.finish()));
        assertThat(numbers(office, DIFFERING, "")).containsExactly(new EnvelopeNumber(Keying.NUMBER));
        IntakeEnvelopeRow line = office.the(EnvelopeListService.class)
                .lastReceived(new ElectionId(ID), 5)
                .get(0);
        assertThat(line.keyed()).isEqualTo("keyings differ in 1 field");
        keying.lastName = "Kell";
        accepted(office.the(KeyingService.class).handIn(keying.finish()));
        assertThat(count(office, DIFFERING)).isZero();
        assertThat(count(office, KEYED_ONCE)).isEqualTo(60);
    }

    @OnBothDatabases
    void a_list_is_read_a_page_at_a_time_and_found_in_by_the_beginning_of_a_number(TestOffice office) {
        received(office);
        EnvelopeListService lists = office.the(EnvelopeListService.class);
        assertThat(lists.page(new ElectionId(ID), ALL, "", 59, 10))
                .extracting(IntakeEnvelopeRow::envelopeNo)
                .hasSize(2)
                .last()
                .isEqualTo(new EnvelopeNumber(Keying.NUMBER));
        assertThat(numbers(office, ALL, "p-200")).containsExactly(new EnvelopeNumber(Keying.NUMBER));
        assertThat(numbers(office, ALL, "2222-2222")).containsExactly(new EnvelopeNumber(Keying.NUMBER));
        assertThat(numbers(office, ALL, "%")).isEmpty();
    }

    @OnBothDatabases
    void the_next_to_key_is_the_own_draft_and_never_what_somebody_else_has_in_hand(TestOffice office) {
        received(office);
        keying.envelopeNo = new EnvelopeNumber("P-2002");
        keying.receiptNo = new ReceiptNumber("3333-3333-9");
        accepted(office.the(ReceivingService.class).receive(keying.receive()));
        NextEnvelopeService next = office.the(NextEnvelopeService.class);
        assertThat(next.first(new ElectionId(ID))).contains(Keying.NUMBER);
        accepted(office.the(KeyingService.class)
                .saveDraft(new SaveKeyingDraft(new ElectionId(ID), new EnvelopeNumber("P-2002"), 0, Map.of())));
        assertThat(next.first(new ElectionId(ID))).contains("P-2002");
        Staff.signIn("otto");
        assertThat(next.first(new ElectionId(ID))).contains(Keying.NUMBER);
        assertThat(next.second(new ElectionId(ID))).contains("P-1001");
    }

    @OnBothDatabases
    void who_keyed_an_envelope_first_is_not_given_it_for_the_second_keying(TestOffice office) {
        received(office);
        office.jdbc()
                .sql("update envelope set received_at = recorded_at where received_at is null")
                .update();
        accepted(office.the(KeyingService.class).handIn(keying.finish()));
        assertThat(office.the(NextEnvelopeService.class).second(new ElectionId(ID)))
                .isEmpty();
        Staff.signIn("otto");
        assertThat(office.the(NextEnvelopeService.class).second(new ElectionId(ID)))
                .contains(Keying.NUMBER);
    }

    @OnBothDatabases
    void voting_locations_that_do_not_add_up_come_first_in_a_sentence(TestOffice office) {
        received(office);
        office.the(TransmittalService.class)
                .record(new RecordTransmittal(
                        new ElectionId(ID),
                        "Library",
                        LocalDate.of(2026, 8, 4),
                        "B9",
                        "11",
                        "12",
                        60,
                        2,
                        0,
                        57,
                        3,
                        0,
                        0));
        List<LocationReturn> all = office.the(LocationReturnService.class).all(new ElectionId(ID));
        LocationReturn library = all.stream()
                .filter(locationReturn -> locationReturn.votingLocation().equals("Library"))
                .findFirst()
                .orElseThrow();
        assertThat(library.sentence())
                .isEqualTo(
                        "Library sent back 3 envelopes and logged 2; sent back 3 envelopes; 1 is here; was given 60 and"
                                + " accounts for 59 (2 issued, 0 spoiled, 57 unused); bag B9 went out with seal 11 and came back with"
                                + " seal 12.");
        assertThat(all).extracting(LocationReturn::addsUp).isSorted();
        assertThat(all.get(all.size() - 1).sentence()).contains("as many as it logged, and all are here");
    }

    @OnBothDatabases
    void a_voter_who_brings_something_is_found_by_number_receipt_or_name_and_told_until_when(TestOffice office) {
        received(office);
        CureLookupService desk = office.the(CureLookupService.class);
        assertThat(desk.find(new ElectionId(ID), " 222222220 ", 5))
                .extracting(FoundEnvelope::envelopeNo)
                .containsExactly(new EnvelopeNumber(Keying.NUMBER));
        assertThat(desk.find(new ElectionId(ID), "okaf", 5))
                .extracting(FoundEnvelope::voter)
                .contains("Craig Okafor");
        assertThat(desk.find(new ElectionId(ID), "_", 5)).isEmpty();
        LocalDateTime late = LocalDateTime.of(2026, 9, 30, 9, 0);
        assertThat(desk.inTime(new ElectionId(ID), Ask.IDENTIFICATION, late)).startsWith("Stamped too late. Deadline:");
        assertThat(desk.inTime(new ElectionId(ID), Ask.IDENTIFICATION, Keying.CAST))
                .startsWith("Stamped on time. Deadline:");
    }

    @OnBothDatabases
    void whoever_has_no_part_in_intake_reads_no_list(TestOffice office) {
        received(office);
        Staff.hire(office, "ada", Role.ADMINISTRATOR);
        Staff.signIn("ada");
        assertThatThrownBy(() -> count(office, ALL)).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> office.the(LocationReturnService.class).all(new ElectionId(ID)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> office.the(NextEnvelopeService.class).first(new ElectionId(ID)))
                .isInstanceOf(NotPermittedException.class);
    }
}
