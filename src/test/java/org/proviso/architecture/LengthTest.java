package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files stay within 300 lines and methods within 40, so that each can be read at one sitting. */
class LengthTest {

    @TempDir
    private Path folder;

    @Test
    void no_file_and_no_method_of_the_program_is_too_long() throws IOException {
        SourceLengths lengths = SourceLengths.under(Path.of("src", "main", "java"));
        assertThat(lengths.files()).isGreaterThan(100);
        assertThat(lengths.methods()).isGreaterThan(lengths.files());
        assertThat(lengths.tooLong()).isEmpty();
    }

    @Test
    void a_file_of_301_lines_and_a_method_of_41_are_found_out() throws IOException {
        Files.writeString(folder.resolve("Long.java"), classWithMethodOf(41) + "\n".repeat(301 - 43));
        assertThat(SourceLengths.under(folder).tooLong())
                .containsExactly("Long.java has 301 lines", "Long.java: count has 41 lines");
    }

    @Test
    void a_file_of_300_lines_and_a_method_of_40_pass() throws IOException {
        Files.writeString(folder.resolve("Long.java"), classWithMethodOf(40) + "\n".repeat(300 - 42));
        SourceLengths lengths = SourceLengths.under(folder);
        assertThat(lengths.tooLong()).isEmpty();
        assertThat(lengths.methods()).isOne();
    }

    private static String classWithMethodOf(int lines) {
        return "class Long {\nvoid count() {\n" + "count();\n".repeat(lines - 2) + "}\n}\n";
    }
}
