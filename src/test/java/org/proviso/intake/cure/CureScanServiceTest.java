package org.proviso.intake.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.files.InputException;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.StoredImage;

/** Scans and photos of what voters brought: kept with their evidence, with the hash in the ledger. */
class CureScanServiceTest {

    private static final ElectionId ELECTION = new ElectionId(LoadedOffice.ID);
    private static final EnvelopeNumber ENVELOPE = new EnvelopeNumber("P-1001");
    private static final Path SIGNATURES = Path.of("sample-cases", LoadedOffice.ID, "signatures", "envelopes");

    private static CureScanService withEvidence(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.hire(office, "vera", Role.RELEASE_TEAM);
        accepted(as(
                "ines",
                () -> office.the(CureService.class)
                        .record(new RecordCure(
                                ELECTION,
                                ENVELOPE,
                                Ask.IDENTIFICATION,
                                LocalDateTime.of(2026, 8, 6, 9, 0),
                                "State ID, by email"))));
        return office.the(CureScanService.class);
    }

    private static byte[] picture(String envelope) {
        try {
            return Files.readAllBytes(SIGNATURES.resolve(envelope + ".png"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static ActResult<CureScan> keep(CureScanService scans, String name, byte[] content) {
        return as("ines", () -> scans.keep(ELECTION, ENVELOPE, 1, name, content));
    }

    private static void replays(TestOffice office, boolean whole) {
        assertThat(office.the(CureReplay.class).replay(ELECTION).first().isEmpty())
                .isEqualTo(whole);
    }

    @OnBothDatabases
    void scans_are_kept_with_their_evidence_and_their_hash_is_in_the_ledger(TestOffice office) {
        CureScanService scans = withEvidence(office);
        byte[] front = picture("P-1001");
        assertThat(accepted(keep(scans, "front.png", front))).isEqualTo(new CureScan(1, 1, "image/png"));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("cure_scan_kept");
        assertThat(LoadedOffice.lastEntry(office).payload())
                .containsEntry("evidence", 1L)
                .containsEntry("scan", 1L)
                .containsEntry("sha256", Sha256.of(front));
        assertThat(why(keep(scans, "again.png", front))).isEqualTo(Why.NOTHING_NEW);
        accepted(keep(scans, "back.png", picture("P-1002")));
        assertThat(as("ines", () -> scans.scans(ELECTION, ENVELOPE)))
                .extracting(CureScan::words)
                .containsExactly("Scan 1 of evidence 1", "Scan 2 of evidence 1");
        assertThat(as("ines", () -> scans.scan(ELECTION, ENVELOPE, 1, 1)).map(StoredImage::content))
                .hasValueSatisfying(content -> assertThat(content).isEqualTo(front));
        assertThat(as("ines", () -> scans.scan(ELECTION, ENVELOPE, 1, 3))).isEmpty();
        replays(office, true);
        office.jdbc()
                .sql("update cure_scan set sha256 = 'other' where scan_no = 2")
                .update();
        replays(office, false);
    }

    @OnBothDatabases
    void what_is_no_picture_or_too_large_or_of_evidence_taken_back_is_not_kept(TestOffice office) {
        CureScanService scans = withEvidence(office);
        assertThatThrownBy(() -> keep(scans, "letter.pdf", "%PDF-1.7".getBytes()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("not a PNG or JPEG image");
        assertThatThrownBy(() -> keep(scans, "huge.png", new byte[5_000_001])).hasMessageContaining("larger than 5 MB");
        assertThatThrownBy(() -> as("ines", () -> scans.keep(ELECTION, ENVELOPE, 2, "a.png", picture("P-1001"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no evidence 2");
        accepted(as(
                "ines",
                () -> office.the(CureService.class)
                        .takeBack(new TakeBackCure(ELECTION, ENVELOPE, 1, "It was another voter's."))));
        assertThat(why(keep(scans, "front.png", picture("P-1001")))).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(as("ines", () -> scans.scans(ELECTION, ENVELOPE))).isEmpty();
        replays(office, true);
    }

    @OnBothDatabases
    void nobody_else_sees_them_and_a_closed_election_takes_none(TestOffice office) {
        CureScanService scans = withEvidence(office);
        accepted(keep(scans, "front.png", picture("P-1001")));
        assertThatThrownBy(() -> as("vera", () -> scans.scan(ELECTION, ENVELOPE, 1, 1)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("vera", () -> scans.scans(ELECTION, ENVELOPE)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("vera", () -> scans.keep(ELECTION, ENVELOPE, 1, "a.png", picture("P-1002"))))
                .isInstanceOf(NotPermittedException.class);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(ELECTION);
            return true;
        });
        assertThat(why(keep(scans, "back.png", picture("P-1002")))).isEqualTo(Why.ELECTION_CLOSED);
    }
}
