package org.proviso.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import jakarta.validation.ConstraintViolationException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.keying.KeyingService;

/** It is three months after the samples' primary; a sixty-first envelope turns up. */
class ReceivingServiceTest {

    private static final String ID = LoadedOffice.ID;

    private final Keying keying = new Keying();

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static ReceivingService asClerk(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.signIn("ines");
        return office.the(ReceivingService.class);
    }

    @OnADatabase
    void an_envelope_taken_in_is_the_elections_last_with_every_box_not_yet_keyed(TestOffice office) {
        accepted(asClerk(office).receive(keying.receive()));
        IntakeService intake = office.the(IntakeService.class);
        assertThat(intake.envelopes(new ElectionId(ID))).hasSize(61);
        assertThat(intake.envelopes(new ElectionId(ID)).get(60))
                .isEqualTo(keying.receive().envelope());
        Envelope kept = intake.envelope(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                .orElseThrow();
        assertThat(kept.affirmation().fieldStates().values())
                .hasSize(8)
                .containsOnly(Envelope.FieldState.NOT_YET_KEYED);
        assertThat(intake.salt(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isPresent();
        assertThat(office.jdbc()
                        .sql("select received_at from envelope where envelope_no = ?")
                        .param(Keying.NUMBER)
                        .query(LocalDateTime.class)
                        .single())
                .isEqualTo(keying.receivedAt);
    }

    @OnADatabase
    void it_waits_to_be_keyed(TestOffice office) {
        accepted(asClerk(office).receive(keying.receive()));
        assertThat(office.the(KeyingService.class).waiting(new ElectionId(ID)))
                .endsWith(new EnvelopeNumber(Keying.NUMBER));
    }

    @OnADatabase
    void the_ledger_has_where_and_when_and_no_receipt_number(TestOffice office) {
        accepted(asClerk(office).receive(keying.receive()));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("envelope_received");
        assertThat(LoadedOffice.lastEntry(office).subject()).isEqualTo(Keying.NUMBER);
        assertThat(LoadedOffice.lastEntry(office).payload())
                .isEqualTo(Map.of(
                        "source", "poll",
                        "voting_location", "Library",
                        "style", "T06-G",
                        "received_at", "2026-08-04T22:30"));
    }

    @OnADatabase
    void an_envelope_is_not_taken_in_twice(TestOffice office) {
        ReceivingService service = asClerk(office);
        accepted(service.receive(keying.receive()));
        assertRefused(service, Why.NUMBER_TAKEN, "envelopeNo", "an envelope P-2001 already");
        keying.envelopeNo = new EnvelopeNumber("P-2002");
        assertRefused(service, Why.NUMBER_TAKEN, "receiptNo", "2222-2222-0 is also on P-2001.");
        assertThat(office.the(IntakeService.class).envelopes(new ElectionId(ID)))
                .hasSize(61);
    }

    @OnBothDatabases
    void any_number_of_envelopes_comes_in_without_a_receipt_number(TestOffice office) {
        ReceivingService service = asClerk(office);
        keying.receiptNo = null;
        accepted(service.receive(keying.receive()));
        assertThat(LoadedOffice.lastEntry(office).payload()).containsEntry("receipt", "none");
        keying.envelopeNo = new EnvelopeNumber("P-2002");
        accepted(service.receive(keying.receive()));
        assertThat(office.the(IntakeService.class).envelopes(new ElectionId(ID)))
                .hasSize(62)
                .last()
                .extracting(Envelope::receiptNo)
                .isNull();
    }

    @OnBothDatabases
    void a_receipt_number_of_another_envelope_comes_in_once_a_person_has_seen_that(TestOffice office) {
        ReceivingService service = asClerk(office);
        accepted(service.receive(keying.receive()));
        keying.envelopeNo = new EnvelopeNumber("P-2002");
        keying.receiptNo = new ReceiptNumber("222222220");
        assertRefused(service, Why.NUMBER_TAKEN, "receiptNo", "also on P-2001.");
        assertThat(service.withReceipt(new ElectionId(ID), new ReceiptNumber("2222 2222 0")))
                .containsExactly("P-2001");
        keying.sharesReceipt = true;
        accepted(service.receive(keying.receive()));
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("receipt_also_on", List.of("P-2001"))
                .doesNotContainValue("2222-2222-0");
    }

    @OnBothDatabases
    void a_second_envelope_with_the_same_number_comes_in_under_one_made_distinct(TestOffice office) {
        ReceivingService service = asClerk(office);
        accepted(service.receive(keying.receive()));
        keying.numberAlsoOn = new EnvelopeNumber("P-9999");
        keying.envelopeNo = new EnvelopeNumber("P-2001-2");
        keying.receiptNo = null;
        assertRefused(service, Why.NO_SUCH_ENVELOPE, "envelopeNo", "no envelope P-9999");
        keying.numberAlsoOn = new EnvelopeNumber("P-2001");
        accepted(service.receive(keying.receive()));
        assertThat(LoadedOffice.lastEntry(office).payload()).containsEntry("number_also_on", "P-2001");
        assertThat(office.jdbc()
                        .sql("select number_also_on from envelope where envelope_no = 'P-2001-2'")
                        .query(String.class)
                        .single())
                .isEqualTo("P-2001");
    }

    @OnADatabase
    void the_boxes_are_chosen_from_what_the_election_knows(TestOffice office) {
        ReceivingService service = asClerk(office);
        accepted(service.receive(keying.receive()));
        ReceivingChoices choices = service.choices(new ElectionId(ID));
        assertThat(choices.votingLocations())
                .contains("Millbrook City Hall", "Library")
                .isSorted()
                .doesNotContain("");
        assertThat(choices.precincts()).contains("101", "501").doesNotHaveDuplicates();
        assertThat(choices.styles()).contains("T01-G", "T11-N");
        assertThat(choices.parties()).containsExactly("Granite", "Harbor");
    }

    @OnADatabase
    void a_style_that_the_election_does_not_have_is_refused_by_name(TestOffice office) {
        ReceivingService service = asClerk(office);
        keying.style = "T99";
        assertRefused(service, Why.NO_SUCH_STYLE, "ballotStyle", "no ballot style T99");
    }

    @OnADatabase
    void a_stamp_that_cannot_be_right_is_refused(TestOffice office) {
        ReceivingService service = asClerk(office);
        keying.receivedAt = Keying.CAST.minusMinutes(1);
        assertRefused(service, Why.MOMENT_NOT_POSSIBLE, "receivedAt", "earlier than the ballot");
        keying.receivedAt = Keying.CAST.plusYears(1);
        assertRefused(service, Why.MOMENT_NOT_POSSIBLE, "receivedAt", "later than now");
    }

    @OnADatabase
    void a_number_with_other_characters_is_named(TestOffice office) {
        ReceivingService service = asClerk(office);
        keying.receiptNo = new ReceiptNumber("qqqq 2222");
        assertThatThrownBy(() -> service.receive(keying.receive()))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("receiptNo: has capital letters, digits and - only");
    }

    @OnADatabase
    void a_mistyped_receipt_number_is_refused_and_its_spelling_does_not_matter(TestOffice office) {
        ReceivingService service = asClerk(office);
        keying.receiptNo = new ReceiptNumber("2222-2223-0");
        assertRefused(
                service,
                Why.MISTYPED,
                "receiptNo",
                "The receipt number 2222-2223-0 has a wrong digit or two swapped digits.");
        keying.receiptNo = new ReceiptNumber("QQQQ-2222");
        assertRefused(service, Why.MISTYPED, "receiptNo", "may contain digits only");
        keying.receiptNo = new ReceiptNumber("222222220");
        accepted(service.receive(keying.receive()));
        assertThat(office.the(IntakeService.class)
                        .envelope(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                        .orElseThrow()
                        .receiptNo())
                .isEqualTo(new ReceiptNumber("2222-2222-0"));
    }

    @OnADatabase
    void numbers_of_the_offices_own_are_not_checked(TestOffice office) {
        ReceivingService service = asClerk(office);
        office.jdbc().sql("update election set receipts = 'own'").update();
        keying.receiptNo = new ReceiptNumber("QQQQ-2222");
        accepted(service.receive(keying.receive()));
        assertThat(office.the(IntakeService.class).envelope(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isPresent();
    }

    @OnADatabase
    void a_decider_takes_nothing_in(TestOffice office) {
        ReceivingService service = asClerk(office);
        Staff.hire(office, "dora", Role.DECIDER);
        Staff.signIn("dora");
        assertThatThrownBy(() -> service.receive(keying.receive())).isInstanceOf(NotPermittedException.class);
    }

    private void assertRefused(ReceivingService service, Why why, String field, String words) {
        Refusal refusal = refused(service.receive(keying.receive()));
        assertThat(refusal).returns(why, Refusal::why).returns(field, Refusal::field);
        assertThat(refusal.words()).contains(words);
    }
}
