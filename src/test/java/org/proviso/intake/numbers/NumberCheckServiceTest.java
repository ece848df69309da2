package org.proviso.intake.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.intake.Keying;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.ReceivingService;
import org.proviso.review.replay.CaseReplay;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.transaction.support.TransactionTemplate;

/** Ines receives envelopes whose numbers are missing or used twice, and settles them. */
class NumberCheckServiceTest {

    private static final ElectionId ID = new ElectionId(LoadedOffice.ID);
    private static final String RECEIPT = "2222-2222-0";
    private static final String OTHER_RECEIPT = "4817-2206-5";

    @TempDir
    private Path temporary;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static NumberCheckService asInes(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.signIn("ines");
        return office.the(NumberCheckService.class);
    }

    private static void receive(TestOffice office, String number, @Nullable String receipt, @Nullable String alsoOn) {
        Keying keying = new Keying();
        keying.envelopeNo = new EnvelopeNumber(number);
        keying.receiptNo = ReceiptNumber.orNull(receipt);
        keying.numberAlsoOn = EnvelopeNumber.orNull(alsoOn);
        keying.sharesReceipt = true;
        accepted(office.the(ReceivingService.class).receive(keying.receive()));
    }

    private static MarkedEnvelope marked(NumberCheckService checks, String number) {
        return checks.all(ID).stream()
                .filter(one -> one.envelopeNo().value().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static ActResult<MarkedEnvelope> confirm(NumberCheckService checks, MarkedEnvelope seen) {
        return checks.confirm(
                new ConfirmNumber(ID, seen.envelopeNo(), seen.mark(), seen.alsoOn(), "Printed so on both."));
    }

    private static ActResult<EnvelopeNumber> correct(
            NumberCheckService checks, MarkedEnvelope seen, @Nullable String receipt) {
        return correct(checks, seen, receipt, false);
    }

    private static ActResult<EnvelopeNumber> correct(
            NumberCheckService checks, MarkedEnvelope seen, @Nullable String receipt, boolean shares) {
        return checks.correct(new CorrectReceipt(
                ID, seen.envelopeNo(), seen.version(), ReceiptNumber.orNull(receipt), shares, "Read again."));
    }

    private static @Nullable ReceiptNumber receipt(TestOffice office, String number) {
        return office.the(IntakeService.class)
                .envelope(ID, new EnvelopeNumber(number))
                .map(Envelope::receiptNo)
                .orElse(null);
    }

    private static void assertWhole(TestOffice office, int settled) {
        assertThat(office.the(NumberCheckReplay.class).replay(ID))
                .returns((long) settled, compared -> compared.things())
                .returns(List.of(), compared -> compared.first());
        assertThat(office.the(CaseReplay.class).replay(ID).first()).isEmpty();
    }

    @OnBothDatabases
    void each_envelope_is_marked_for_what_is_missing_or_used_twice(TestOffice office) {
        NumberCheckService checks = asInes(office);
        assertThat(checks.all(ID)).isEmpty();
        receive(office, "P-2001", null, null);
        receive(office, "P-2002", null, null);
        receive(office, "P-2003", RECEIPT, null);
        receive(office, "P-2004", RECEIPT, null);
        receive(office, "P-2003-2", OTHER_RECEIPT, "P-2003");
        receive(office, "P-2003-2-2", CheckedReceipt.of("77000001").value(), "P-2003-2");
        assertThat(checks.all(ID))
                .extracting(one -> one.envelopeNo().value(), MarkedEnvelope::words, MarkedEnvelope::isSettled)
                .containsExactly(
                        tuple("P-2001", "no receipt number", false),
                        tuple("P-2002", "no receipt number", false),
                        tuple("P-2003", "receipt number also on P-2004", false),
                        tuple("P-2003", "number also on P-2003-2 and P-2003-2-2", false),
                        tuple("P-2004", "receipt number also on P-2003", false),
                        tuple("P-2003-2", "number also on P-2003 and P-2003-2-2", false),
                        tuple("P-2003-2-2", "number also on P-2003 and P-2003-2", false));
    }

    @OnBothDatabases
    void a_folder_with_such_envelopes_is_loaded_and_they_are_marked(TestOffice office) throws IOException {
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        Path folder = copy(LoadedOffice.ID);
        Path file = folder.resolve("envelopes.csv");
        List<String> lines = Files.readAllLines(file);
        String third = lines.get(3).split(",", -1)[1];
        lines.set(1, without(lines.get(1), ""));
        lines.set(2, without(lines.get(2), ""));
        lines.set(4, without(lines.get(4), third));
        Files.write(file, lines);
        accepted(office.the(ElectionLoadService.class).load(folder));
        assertThat(office.the(NumberCheckService.class).all(ID))
                .extracting(one -> one.envelopeNo().value(), MarkedEnvelope::words)
                .containsExactly(
                        tuple("P-1001", "no receipt number"),
                        tuple("P-1002", "no receipt number"),
                        tuple("P-1003", "receipt number also on P-1004"),
                        tuple("P-1004", "receipt number also on P-1003"));
    }

    @OnBothDatabases
    void a_receipt_number_of_an_earlier_election_is_marked_in_the_later_one(TestOffice office) throws IOException {
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", LoadedOffice.ID)));
        OfficeTime.set(office, LocalDateTime.of(2026, 11, 4, 9, 0));
        Path later = copy("again");
        Files.writeString(later.resolve("election.yaml"), "\n# again\n", StandardOpenOption.APPEND);
        accepted(office.the(ElectionLoadService.class).load(later));
        NumberCheckService checks = office.the(NumberCheckService.class);
        assertThat(checks.all(ID)).isEmpty();
        ElectionId again = new ElectionId("again");
        String name = office.the(ElectionService.class).find(ID).orElseThrow().name();
        assertThat(checks.all(again))
                .hasSize(60)
                .first()
                .returns("receipt number also on P-1001 (" + name + ")", MarkedEnvelope::words);
    }

    private static String without(String row, String receipt) {
        String[] cells = row.split(",", -1);
        cells[1] = receipt;
        return String.join(",", cells);
    }

    private Path copy(String name) throws IOException {
        Path from = Path.of("sample-cases", LoadedOffice.ID);
        Path to = temporary.resolve(name);
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
        return to;
    }

    @OnBothDatabases
    void what_is_confirmed_holds_for_those_that_had_the_number_then(TestOffice office) {
        NumberCheckService checks = asInes(office);
        receive(office, "P-2001", RECEIPT, null);
        receive(office, "P-2002", RECEIPT, null);
        MarkedEnvelope second = marked(checks, "P-2002");
        accepted(confirm(checks, second));
        assertThat(LoadedOffice.lastEntry(office))
                .returns("number_confirmed", entry -> entry.act())
                .returns("P-2002", entry -> entry.subject());
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("mark", "receipt_shared")
                .containsEntry("envelopes", "P-2001;P-2002")
                .containsKey("because")
                .doesNotContainValue("Printed so on both.");
        assertThat(checks.all(ID)).extracting(MarkedEnvelope::confirmed).containsOnly("Printed so on both.");
        receive(office, "P-2003", RECEIPT, null);
        assertThat(checks.all(ID)).hasSize(3).noneMatch(MarkedEnvelope::isSettled);
        assertThatThrownBy(() -> confirm(checks, second))
                .as("the page is from before the third came")
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertWhole(office, 1);
    }

    @OnBothDatabases
    void a_corrected_receipt_number_is_marked_no_more(TestOffice office) {
        NumberCheckService checks = asInes(office);
        receive(office, "P-2001", RECEIPT, null);
        receive(office, "P-2002", RECEIPT, null);
        receive(office, "P-2003", null, null);
        MarkedEnvelope second = marked(checks, "P-2002");
        accepted(correct(checks, second, "481722065"));
        assertThat(receipt(office, "P-2002")).isEqualTo(new ReceiptNumber(OTHER_RECEIPT));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("receipt_corrected");
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("envelopes", "P-2001;P-2002")
                .doesNotContainValue(OTHER_RECEIPT)
                .doesNotContainValue("Read again.");
        assertThat(checks.all(ID)).extracting(MarkedEnvelope::words).containsExactly("no receipt number");
        assertRefused(correct(checks, second, RECEIPT), Why.NOT_IN_THIS_STATE);
        MarkedEnvelope third = marked(checks, "P-2003");
        assertRefused(correct(checks, third, null), Why.NOTHING_NEW);
        assertRefused(correct(checks, third, "2222-2223-0"), Why.MISTYPED);
        assertRefused(correct(checks, third, RECEIPT), Why.NUMBER_TAKEN);
        accepted(correct(checks, third, RECEIPT, true));
        assertThat(checks.all(ID))
                .extracting(MarkedEnvelope::words)
                .containsExactly("receipt number also on P-2003", "receipt number also on P-2001");
        assertWhole(office, 2);
    }

    @OnBothDatabases
    void a_correction_from_an_old_page_is_stale(TestOffice office) {
        NumberCheckService checks = asInes(office);
        receive(office, "P-2001", null, null);
        MarkedEnvelope seen = marked(checks, "P-2001");
        office.jdbc()
                .sql("update envelope set version = version + 1 where envelope_no = 'P-2001'")
                .update();
        assertThatThrownBy(() -> correct(checks, seen, RECEIPT)).isInstanceOf(OptimisticLockingFailureException.class);
    }

    @OnBothDatabases
    void what_somebody_changed_behind_the_ledger_is_named(TestOffice office) {
        NumberCheckService checks = asInes(office);
        receive(office, "P-2001", RECEIPT, null);
        receive(office, "P-2002", RECEIPT, null);
        accepted(correct(checks, marked(checks, "P-2002"), OTHER_RECEIPT));
        assertWhole(office, 1);
        for (String change : List.of(
                "update envelope set receipt_no = '1111-1111-1' where envelope_no = 'P-2002'",
                "update number_check set because = 'Otherwise.'",
                "update number_check set settled = 'confirmed'",
                "delete from number_check")) {
            office.the(TransactionTemplate.class).executeWithoutResult(attempt -> {
                assertThat(office.jdbc().sql(change).update()).isOne();
                assertThat(office.the(NumberCheckReplay.class).replay(ID).first())
                        .as(change)
                        .singleElement()
                        .asString()
                        .startsWith("Envelope P-2002, ");
                attempt.setRollbackOnly();
            });
        }
    }

    private static void assertRefused(ActResult<EnvelopeNumber> result, Why why) {
        assertThat(refused(result)).returns(why, Refusal::why);
    }
}
