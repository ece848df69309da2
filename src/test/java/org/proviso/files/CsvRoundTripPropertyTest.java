package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.csv.CsvTable;

class CsvRoundTripPropertyTest {

    private static final List<String> HEADER = List.of("a", "b", "c");

    @Property(tries = 300)
    void rows_written_and_read_again_are_equal(@ForAll("tables") List<List<String>> rows) throws IOException {
        Path file = Files.createTempFile("round-trip", ".csv");
        try {
            CsvOutput.write(file, HEADER, out -> rows.forEach(out::row));
            CsvColumns columns = CsvColumns.of("a", "b", "c");
            List<String> warnings = new ArrayList<>();

            List<List<String>> again = CsvTable.read(
                            file, columns, warnings::add, row -> List.of(row.text(0), row.text("b"), row.text("c")))
                    .values();

            assertThat(again).isEqualTo(rows);
            assertThat(warnings).isEmpty();
        } finally {
            Files.delete(file);
        }
    }

    @Property(tries = 200)
    void rows_of_a_single_column_survive_too(@ForAll("cells") String cell) throws IOException {
        Path file = Files.createTempFile("round-trip", ".csv");
        try {
            CsvOutput.write(file, List.of("a"), out -> out.row(cell));
            assertThat(CsvTable.read(file, CsvColumns.of("a"), w -> {}, row -> row.text("a"))
                            .values())
                    .containsExactly(cell);
        } finally {
            Files.delete(file);
        }
    }

    @Provide
    Arbitrary<List<List<String>>> tables() {
        return cells().list().ofSize(HEADER.size()).list().ofMaxSize(20);
    }

    /** Any text, with what CSV finds hard more often than chance would; a NUL is no text. */
    @Provide
    Arbitrary<String> cells() {
        Arbitrary<Character> hard = Arbitraries.of('"', ',', '\n', '\r', ' ', ';', '#', '\uFEFF', '\u00eb', '\u20ac');
        Arbitrary<Character> any = Arbitraries.chars().range('\u0001', '\uD7FF');
        Arbitrary<String> astral = Arbitraries.of("\uD83D\uDDF3", "");
        Arbitrary<String> mixed = Arbitraries.oneOf(hard, any)
                .map(String::valueOf)
                .list()
                .ofMaxSize(40)
                .map(l -> String.join("", l));
        return Arbitraries.oneOf(mixed, astral);
    }
}
