package org.proviso.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.Sha256;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.InputException;

/** The pictures of the samples' primary are in the tables as they lie in its folder. */
class ImageServiceTest {

    private static final String ID = LoadedOffice.ID;
    private static final Path SIGNATURES = Path.of("sample-cases", ID, "signatures");

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static ImageService as(TestOffice office, Role role) {
        LoadedOffice.primary(office);
        Staff.hire(office, "someone", role);
        Staff.signIn("someone");
        return office.the(ImageService.class);
    }

    @OnBothDatabases
    void the_signature_of_an_envelope_is_the_picture_of_the_folder(TestOffice office) throws IOException {
        ImageService images = as(office, Role.REVIEWER);
        byte[] file = Files.readAllBytes(SIGNATURES.resolve("envelopes/P-1001.png"));
        StoredImage image = images.signature(new ElectionId(ID), new EnvelopeNumber("P-1001"))
                .orElseThrow();
        assertThat(image.content()).isEqualTo(file);
        assertThat(image.mediaType()).isEqualTo("image/png");
        assertThat(image.sha256()).isEqualTo(Sha256.of(file));
        assertThat(images.signature(new ElectionId(ID), new EnvelopeNumber("P-9999")))
                .isEmpty();
    }

    @OnBothDatabases
    void the_signatures_on_file_come_in_their_order(TestOffice office) throws IOException {
        ImageService images = as(office, Role.DECIDER);
        String second = Files.list(SIGNATURES.resolve("roll"))
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith("-2.png"))
                .sorted()
                .findFirst()
                .orElseThrow();
        String voter = second.substring(0, second.indexOf('-'));
        assertThat(images.exemplars(new ElectionId(ID), new VoterId(voter))).hasSizeGreaterThan(1);
        assertThat(images.exemplars(new ElectionId(ID), new VoterId(voter))
                        .get(1)
                        .content())
                .isEqualTo(Files.readAllBytes(SIGNATURES.resolve("roll").resolve(second)));
        assertThat(images.exemplars(new ElectionId(ID), new VoterId("nobody"))).isEmpty();
    }

    @OnBothDatabases
    void every_picture_of_the_folder_is_there(TestOffice office) throws IOException {
        as(office, Role.REVIEWER);
        assertThat(rows(office, "envelope_image")).isEqualTo(files("envelopes"));
        assertThat(rows(office, "voter_image")).isEqualTo(files("roll"));
    }

    @OnBothDatabases
    void who_does_not_compare_signatures_sees_none(TestOffice office) {
        ImageService images = as(office, Role.INTAKE);
        assertThatThrownBy(() -> images.signature(new ElectionId(ID), new EnvelopeNumber("P-1001")))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> images.exemplars(new ElectionId(ID), new VoterId("any")))
                .isInstanceOf(NotPermittedException.class);
    }

    @OnBothDatabases
    void a_scan_is_kept_for_an_envelope_that_came_without_one_and_never_replaced(TestOffice office) throws IOException {
        ImageService images = as(office, Role.INTAKE);
        byte[] scan = Files.readAllBytes(SIGNATURES.resolve("envelopes/P-1001.png"));
        accepted(office.the(ReceivingService.class).receive(new Keying().receive()));
        assertThat(images.whileKeying(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isEmpty();
        accepted(images.keepScan(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER), "scan.png", scan));
        assertThat(images.whileKeying(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                        .orElseThrow()
                        .content())
                .isEqualTo(scan);
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("scan_kept");
        assertThat(LoadedOffice.lastEntry(office).payload().get("sha256")).isEqualTo(Sha256.of(scan));
        assertThat(refused(images.keepScan(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER), "again.png", scan))
                        .why())
                .isEqualTo(Refusal.Why.SCAN_KEPT);
        assertThatThrownBy(() -> images.keepScan(new ElectionId(ID), new EnvelopeNumber("P-9999"), "again.png", scan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("P-9999");
    }

    @OnBothDatabases
    void what_is_no_picture_is_not_kept_and_the_reason_names_it(TestOffice office) {
        ImageService images = as(office, Role.INTAKE);
        accepted(office.the(ReceivingService.class).receive(new Keying().receive()));
        assertThatThrownBy(() -> images.keepScan(
                        new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER), "letter.pdf", "%PDF-1.7".getBytes()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("letter.pdf")
                .hasMessageContaining("not a PNG or JPEG image");
        assertThatThrownBy(() -> images.keepScan(
                        new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER), "huge.png", new byte[5_000_001]))
                .hasMessageContaining("larger than 5 MB");
        assertThat(images.whileKeying(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isEmpty();
    }

    private static long files(String folder) throws IOException {
        try (var files = Files.list(SIGNATURES.resolve(folder))) {
            return files.count();
        }
    }

    private static long rows(TestOffice office, String table) {
        return office.jdbc()
                .sql("select count(*) from " + table)
                .query(Long.class)
                .single();
    }
}
