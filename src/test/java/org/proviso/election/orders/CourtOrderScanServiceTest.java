package org.proviso.election.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.files.InputException;
import org.proviso.intake.LoadedOffice;
import org.proviso.journey.Primary;

/** A court's order with its case number, its judge and a scan of it. */
class CourtOrderScanServiceTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final byte[] PDF = "%PDF-1.7 an order".getBytes(StandardCharsets.US_ASCII);

    private static CourtOrderScanService withOrder(TestOffice office) {
        Primary.loaded(office);
        RecordCourtOrder order = new RecordCourtOrder(
                ELECTION,
                CourtOrder.Kind.HOLD,
                "Circuit Court of Tamarack County",
                LocalDate.of(2026, 8, 5),
                "Until it has heard the parties.",
                CourtOrder.Status.IN_FORCE,
                null,
                Set.of(),
                " 26-1187-CV ",
                "Judge Roe");
        RecordedCourtOrder recorded = accepted(
                as("carl", () -> office.the(CourtOrderRecordService.class).record(order)));
        assertThat(recorded.caseNo()).isEqualTo("26-1187-CV");
        return office.the(CourtOrderScanService.class);
    }

    private static int order(TestOffice office) {
        return as("carl", () -> office.the(CourtOrderRecordService.class).all(ELECTION)).stream()
                .filter(recorded -> !recorded.caseNo().isEmpty())
                .findFirst()
                .orElseThrow()
                .orderNo();
    }

    private static ActResult<CourtOrderScan> keep(TestOffice office, String name, byte[] content) {
        return as("carl", () -> office.the(CourtOrderScanService.class).keep(ELECTION, order(office), name, content));
    }

    @OnBothDatabases
    void case_number_and_judge_stay_with_the_order_and_out_of_the_ledger(TestOffice office) {
        withOrder(office);
        assertThat(LoadedOffice.lastEntry(office).line()).doesNotContain("1187", "Roe");
        assertThat(as("carl", () -> office.the(CourtOrderRecordService.class).all(ELECTION)))
                .filteredOn(recorded -> recorded.orderNo() == order(office))
                .singleElement()
                .satisfies(recorded -> assertThat(recorded.source()).isEqualTo("No. 26-1187-CV, Judge Roe"));
    }

    @OnBothDatabases
    void a_scan_is_kept_with_its_hash_and_read_by_those_who_see_cases(TestOffice office) {
        CourtOrderScanService scans = withOrder(office);
        int order = order(office);
        assertThat(accepted(keep(office, "order.pdf", PDF))).isEqualTo(new CourtOrderScan(order, 1, "application/pdf"));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("order_scan_kept");
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("scan", 1L)
                .containsEntry("sha256", Sha256.of(PDF));
        assertThat(why(keep(office, "again.pdf", PDF))).isEqualTo(Why.NOTHING_NEW);
        accepted(keep(office, "page 2.jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1}));
        assertThat(as("ada", () -> scans.scans(ELECTION)))
                .extracting(CourtOrderScan::words)
                .containsExactly("Scan 1 of order " + order + " (PDF)", "Scan 2 of order " + order + " (picture)");
        assertThat(as("eve", () -> scans.scan(ELECTION, order, 1)).map(KeptPaper::content))
                .hasValueSatisfying(content -> assertThat(content).isEqualTo(PDF));
        assertThat(as("eve", () -> scans.scan(ELECTION, order, 9))).isEmpty();
        assertThatThrownBy(() -> as("hal", () -> scans.scan(ELECTION, order, 1)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("ada", () -> scans.keep(ELECTION, order, "order.pdf", PDF)))
                .isInstanceOf(NotPermittedException.class);
    }

    @OnBothDatabases
    void what_is_no_scan_or_comes_after_the_closing_is_not_kept(TestOffice office) {
        CourtOrderScanService scans = withOrder(office);
        assertThatThrownBy(() -> keep(office, "order.docx", "PK".getBytes(StandardCharsets.US_ASCII)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("order.docx")
                .hasMessageContaining("no PDF");
        assertThatThrownBy(() -> keep(office, "order.pdf", Arrays.copyOf(PDF, 10_000_001)))
                .hasMessageContaining("larger than 10 MB");
        assertThatThrownBy(() -> as("carl", () -> scans.keep(ELECTION, 99, "order.pdf", PDF)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no order 99");
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(ELECTION);
            return true;
        });
        assertThat(why(keep(office, "order.pdf", PDF))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(as("carl", () -> scans.scans(ELECTION))).isEmpty();
    }
}
