package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.csv.CsvOutput;

class AtomicFileTest {

    @TempDir
    Path folder;

    @Test
    void leaves_alone_what_is_no_file() throws IOException {
        Path device = Files.createDirectory(folder.resolve("device"));
        assertThatThrownBy(() -> AtomicFile.writeText(device, "text"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot be replaced: it is not a regular file");
        assertThat(device).isEmptyDirectory();
    }

    @Test
    void replaces_a_file_and_leaves_nothing_beside_it() throws IOException {
        Path file = Files.writeString(folder.resolve("report.txt"), "old");

        AtomicFile.writeText(file, "new \u00eb\n");

        assertThat(file).hasContent("new \u00eb\n");
        assertThat(names()).containsExactly("report.txt");
    }

    @Test
    void keeps_the_old_file_when_writing_fails_halfway() throws IOException {
        Path file = Files.writeString(folder.resolve("report.txt"), "old");

        assertThatThrownBy(() -> AtomicFile.write(file, out -> {
                    out.write("half");
                    throw new IOException("disk full");
                }))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot be written")
                .hasMessageContaining("disk full");

        assertThat(file).hasContent("old");
        assertThat(names()).containsExactly("report.txt");
    }

    @Test
    void refuses_half_a_character_instead_of_writing_a_question_mark() {
        Path file = folder.resolve("report.txt");

        assertThatThrownBy(() -> AtomicFile.writeText(file, "\uD83D")).isInstanceOf(InputException.class);
        assertThat(names()).isEmpty();
    }

    @Test
    void writes_csv_with_line_feeds_and_quotes_only_where_needed() throws IOException {
        Path file = folder.resolve("out.csv");

        CsvOutput.write(file, List.of("a", "b"), out -> out.row("1", "x, \"y\""));

        assertThat(Files.readString(file)).isEqualTo("a,b\n1,\"x, \"\"y\"\"\"\n");
        assertThatThrownBy(() -> CsvOutput.write(file, List.of("a", "b"), out -> out.row("1")))
                .hasMessage("1 cells, but the header has 2");
        assertThat(file).hasContent("a,b\n1,\"x, \"\"y\"\"\"\n");
    }

    private List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
