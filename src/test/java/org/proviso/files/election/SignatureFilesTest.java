package org.proviso.files.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.Envelope;
import org.proviso.core.VoterId;
import org.proviso.files.EnvelopeRows;

/** The folder has two signatures of one voter on file; each test says which one the envelope's row names. */
class SignatureFilesTest {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0};

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void two_on_file() throws IOException {
        folder = Files.createDirectories(temporary.resolve("election"));
        Files.createDirectories(folder.resolve("signatures/roll"));
        write("signatures/roll/V-1-2.png", PNG);
        write("signatures/roll/V-1-1.jpg", JPEG);
        write("envelope.png", PNG);
    }

    @Test
    void a_voters_pictures_are_found_by_voter_and_number_and_known_by_their_first_bytes() {
        SignatureFiles found = read("envelope.png");
        assertThat(found.voters()).extracting("voterId").containsExactly(new VoterId("V-1"), new VoterId("V-1"));
        assertThat(found.voters()).extracting("number").containsExactly(1, 2);
        assertThat(found.voters()).extracting("image.mediaType").containsExactly("image/jpeg", "image/png");
        assertThat(found.envelopes()).singleElement().satisfies(signature -> {
            assertThat(signature.envelopeNo().value()).isEqualTo("E-1");
            assertThat(signature.image().content()).isEqualTo(PNG);
        });
    }

    @Test
    void an_envelope_without_a_picture_and_a_folder_without_a_roll_of_them_are_in_order() throws IOException {
        Files.delete(folder.resolve("signatures/roll/V-1-1.jpg"));
        Files.delete(folder.resolve("signatures/roll/V-1-2.png"));
        Files.delete(folder.resolve("signatures/roll"));
        assertThat(read("")).isEqualTo(new SignatureFiles(List.of(), List.of()));
    }

    @Test
    void a_missing_picture_is_named() {
        refused(() -> read("signatures/none.png"), "signatures/none.png", 0, "", "is missing");
        refused(() -> read("signatures"), "signatures", 0, "", "is missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.png", "signatures/../../secret.png", "/etc/hostname"})
    void a_name_that_leads_out_of_the_folder_is_refused(String name) throws IOException {
        Files.write(temporary.resolve("secret.png"), PNG);
        refused(() -> read(name), name, 0, "", "inside the election folder");
    }

    @Test
    void a_link_that_leads_out_of_the_folder_is_refused() throws IOException {
        Path secret = Files.write(temporary.resolve("secret.png"), PNG);
        Files.createSymbolicLink(folder.resolve("link.png"), secret);
        refused(() -> read("link.png"), "link.png", 0, "", "outside the election folder");
    }

    @Test
    void what_is_no_picture_is_refused_whatever_its_name() throws IOException {
        write("text.png", "no picture".getBytes());
        write("short.png", new byte[] {(byte) 0x89, 'P'});
        refused(() -> read("text.png"), "text.png", 0, "", "not a PNG or JPEG image");
        refused(() -> read("short.png"), "short.png", 0, "", "not a PNG or JPEG image");
    }

    @Test
    void five_million_bytes_pass_and_one_more_does_not() throws IOException {
        grow(5_000_000);
        assertThat(read("envelope.png").envelopes()).hasSize(1);
        grow(5_000_001);
        refused(() -> read("envelope.png"), "envelope.png", 0, "", "larger than 5 MB");
    }

    @Test
    void a_picture_that_changes_before_it_is_loaded_is_refused() throws IOException {
        ImageFile image = read("envelope.png").envelopes().get(0).image();
        write("envelope.png", JPEG);
        refused(image::content, "envelope.png", 0, "", "changed while it was being read");
    }

    @ParameterizedTest
    @ValueSource(strings = {"T1.png", "T1-a.png", "-1.png", "T1-1.gif"})
    void a_file_of_the_roll_that_names_no_voter_and_number_is_refused(String name) throws IOException {
        write("signatures/roll/" + name, PNG);
        refused(() -> read("envelope.png"), "signatures/roll/" + name, 0, "", "does not carry its voter's ID");
    }

    private SignatureFiles read(String image) {
        return SignatureFiles.of(folder, envelope(image));
    }

    private List<Envelope> envelope(String image) {
        try {
            Path rows = temporary.resolve("envelopes.csv");
            Files.writeString(rows, EnvelopeRows.text(Map.of("envelope_no", "E-1", "signature_image", image)));
            return EnvelopeReader.read(rows, warning -> {}).values();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(String name, byte[] content) throws IOException {
        Files.write(folder.resolve(name), content);
    }

    private void grow(int size) throws IOException {
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("envelope.png").toFile(), "rw")) {
            file.setLength(size);
        }
    }
}
