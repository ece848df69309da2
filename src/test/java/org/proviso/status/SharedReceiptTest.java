package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;
import org.proviso.intake.Keying;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.numbers.CorrectReceipt;
import org.proviso.intake.numbers.MarkedEnvelope;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.journey.Primary;

/** Two envelopes have one receipt number: each voter reads the own answer, or is told to call, and never another's. */
class SharedReceiptTest {

    private static final ElectionId ID = new ElectionId(Primary.ID);
    private static final LocalDate KELLS_BIRTH = LocalDate.of(1984, 3, 12);
    private static final LookupResult NOTHING = new LookupResult.NothingFits(null);

    private static Primary loaded(TestOffice office) {
        Primary primary = StatusServiceTest.loaded(office);
        OfficeTime.set(office, LocalDateTime.of(2026, 8, 6, 12, 0));
        return primary;
    }

    private static Envelope first(Primary primary) {
        return StatusServiceTest.envelope(primary, primary.envelope("in_order"));
    }

    private static LookupResult look(TestOffice office, @Nullable ReceiptNumber receipt, @Nullable LocalDate born) {
        return office.the(StatusService.class).lookUp(Objects.requireNonNull(receipt), Objects.requireNonNull(born));
    }

    /** P-2001 of Ada Kell, born on March 12, 1984, comes in with that receipt number. */
    private static void receive(TestOffice office, @Nullable ReceiptNumber receipt) {
        Keying keying = new Keying();
        keying.receiptNo = receipt;
        keying.sharesReceipt = true;
        as("jon", () -> accepted(office.the(ReceivingService.class).receive(keying.receive())));
    }

    private static void key(TestOffice office) {
        as("jon", () -> accepted(office.the(KeyingService.class).handIn(new Keying().finish())));
    }

    @OnBothDatabases
    void each_voter_reads_the_own_answer_once_both_birth_dates_are_known(TestOffice office) {
        Primary primary = loaded(office);
        Envelope first = first(primary);
        LocalDate born = first.affirmation().birthDate();
        LookupResult alone = look(office, first.receiptNo(), born);
        assertThat(alone).isInstanceOf(LookupResult.Found.class);
        receive(office, first.receiptNo());
        assertThat(look(office, first.receiptNo(), born))
                .as("the second voter may have the same birth date")
                .isEqualTo(NOTHING);
        key(office);
        assertThat(look(office, first.receiptNo(), born)).isEqualTo(alone);
        LookupResult.Found second = (LookupResult.Found) look(office, first.receiptNo(), KELLS_BIRTH);
        assertThat(second.arrival().votingLocation()).isEqualTo("Library");
    }

    @OnBothDatabases
    void two_voters_with_one_number_and_one_birth_date_are_told_to_call(TestOffice office) {
        Primary primary = loaded(office);
        Envelope first = first(primary);
        office.jdbc()
                .sql("update affirmation set birth_date = ? where envelope_no = ?")
                .params(KELLS_BIRTH, first.envelopeNo().value())
                .update();
        as("carl", () -> office.the(StatusService.class).rebuild(ID));
        assertThat(look(office, first.receiptNo(), KELLS_BIRTH)).isInstanceOf(LookupResult.Found.class);
        receive(office, first.receiptNo());
        key(office);
        assertThat(look(office, first.receiptNo(), KELLS_BIRTH)).isEqualTo(NOTHING);
        as("carl", () -> office.the(StatusService.class).rebuild(ID));
        assertThat(look(office, first.receiptNo(), KELLS_BIRTH)).isEqualTo(NOTHING);
    }

    @OnBothDatabases
    void a_corrected_number_is_the_one_that_the_voter_looks_up(TestOffice office) {
        Primary primary = loaded(office);
        Envelope first = first(primary);
        LocalDate born = first.affirmation().birthDate();
        receive(office, first.receiptNo());
        ReceiptNumber right = CheckedReceipt.of("77000001");
        MarkedEnvelope marked = as(
                        "jon", () -> office.the(NumberCheckService.class).all(ID))
                .stream()
                .filter(one -> one.envelopeNo().value().equals(Keying.NUMBER))
                .findFirst()
                .orElseThrow();
        as(
                "jon",
                () -> accepted(office.the(NumberCheckService.class)
                        .correct(new CorrectReceipt(
                                ID, marked.envelopeNo(), marked.version(), right, false, "Read again."))));
        assertThat(look(office, first.receiptNo(), born)).isInstanceOf(LookupResult.Found.class);
        key(office);
        assertThat(look(office, right, KELLS_BIRTH)).isInstanceOf(LookupResult.Found.class);
        assertThat(look(office, first.receiptNo(), KELLS_BIRTH)).isEqualTo(NOTHING);
    }

    @OnBothDatabases
    void an_envelope_without_a_receipt_number_has_no_line(TestOffice office) {
        Primary primary = loaded(office);
        int before = lines(office);
        receive(office, null);
        key(office);
        assertThat(lines(office)).isEqualTo(before);
        assertThat(primary.office().the(IntakeService.class).envelope(ID, new EnvelopeNumber(Keying.NUMBER)))
                .isPresent();
        assertThat(look(office, new ReceiptNumber("-"), KELLS_BIRTH)).isInstanceOf(LookupResult.NothingFits.class);
    }

    @OnBothDatabases
    void a_line_from_before_lines_were_of_envelopes_is_taken_over_once_its_case_changes(TestOffice office) {
        Primary primary = loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        Envelope first = first(primary);
        LookupResult alone = look(office, first.receiptNo(), first.affirmation().birthDate());
        int before = lines(office);
        office.jdbc().sql("update status_line set envelope_hash = receipt_hash").update();
        assertThat(look(office, first.receiptNo(), first.affirmation().birthDate()))
                .isEqualTo(alone);
        primary.taken(key, new org.proviso.core.UserName("ada"));
        assertThat(lines(office)).isEqualTo(before);
        assertThat(look(office, first.receiptNo(), first.affirmation().birthDate()))
                .isEqualTo(alone);
    }

    private static int lines(TestOffice office) {
        return office.jdbc()
                .sql("select count(*) from status_line")
                .query(Integer.class)
                .single();
    }
}
