package org.proviso.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.InputException;

/** Files on their way in, in a folder of their own. */
class FolderUploadTest {

    @TempDir
    private Path given;

    private Path zip(String... names) throws IOException {
        Path zip = given.resolve("some.zip");
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream entries = new ZipOutputStream(out)) {
            for (String name : names) {
                entries.putNextEntry(new ZipEntry(name));
                entries.write(name.getBytes(StandardCharsets.UTF_8));
            }
        }
        return zip;
    }

    @Test
    void a_zip_of_a_folder_is_unpacked_and_the_folder_of_the_election_found() throws IOException {
        FolderUpload upload = new FolderUpload();
        upload.take("primary.zip", zip("primary/election.yaml", "primary/roll.csv", "primary/signatures/a.png"));
        assertThat(upload.election().getFileName()).hasToString("primary");
        assertThat(upload.names()).containsExactly("election.yaml", "roll.csv");
        assertThat(upload.election().resolve("signatures/a.png")).hasContent("primary/signatures/a.png");
        Path folder = upload.election();
        upload.close();
        assertThat(folder).doesNotExist();
    }

    @Test
    void files_one_by_one_stand_together() throws IOException {
        try (FolderUpload upload = new FolderUpload()) {
            upload.take("roll.csv", Files.writeString(given.resolve("x1"), "a"));
            upload.take("election.yaml", Files.writeString(given.resolve("x2"), "b"));
            assertThat(upload.names()).containsExactly("election.yaml", "roll.csv");
        }
    }

    @Test
    void a_name_that_leads_out_of_the_folder_is_refused() throws IOException {
        Path zip = zip("../outside.txt");
        try (FolderUpload upload = new FolderUpload()) {
            assertThatThrownBy(() -> upload.take("evil.zip", zip))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("evil.zip")
                    .hasMessageContaining("contains a file outside its folder");
            assertThatThrownBy(() -> upload.take("../evil.csv", zip)).isInstanceOf(InputException.class);
        }
    }
}
