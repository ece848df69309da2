package org.proviso.files.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.files.InputAssert;

/** A mapping is written as it is read, and what is wrong in one is named with its line. */
class MappingYamlTest {

    private static final String GOOD = """
            mapping: "county-roll"
            version: 3
            list: roll
            files: "VOTERS_*.txt"
            source:
              encoding: windows-1252
              delimiter: tab
              quoted: no
              header: yes
              columns:
                - "ID"
                - "STS"
                - "DOB"
            empty: ["NULL"]
            fields:
              voter_id: {from: "ID"}
              date_of_birth: {from: "DOB", date: "DD-MON-YY", pivot: 1927}
              party: {value: "none"}
              status: {from: "STS", codes: {"A": "active", "I": "inactive"}}
            """;

    static Stream<Mapping> mappings() {
        return Stream.of("tab-without-header-20261101.txt", "whole-name.csv", "slashes-and-codes-2026-11-02.csv")
                .map(OwnFiles::of)
                .map(OwnFiles::proposed);
    }

    @ParameterizedTest
    @MethodSource("mappings")
    void a_proposed_mapping_comes_back_as_it_was_written(Mapping mapping) {
        String written = MappingYaml.of(mapping);

        assertThat(MappingYaml.of(MappingReader.read("m.yaml", written))).isEqualTo(written);
    }

    @Test
    void a_mapping_written_by_hand_has_one_spelling() {
        assertThat(MappingYaml.of(MappingReader.read("m.yaml", GOOD))).isEqualTo(GOOD);
    }

    @Test
    void fixed_width_comes_back_with_its_layout() {
        String fixed = GOOD.replaceAll("(?s)delimiter: tab.*empty:", """
                delimiter: fixed_width
                  quoted: no
                  header: no
                  layout:
                    - {name: "ID", from: 1, to: 8}
                    - {name: "STS", from: 9, to: 9}
                    - {name: "DOB", from: 10, to: 18}
                empty:""");

        assertThat(MappingYaml.of(MappingReader.read("m.yaml", fixed))).isEqualTo(fixed);
    }

    @Test
    void what_is_wrong_is_named_with_its_line() {
        refused("voter_id:", "voter_number:", 16, "fields.voter_number", "is not a column of roll.csv");
        refused("from: \"STS\"", "from: \"STAT\"", 19, "fields.status.from", "is not among the columns of the source");
        refused("\"inactive\"", "\"asleep\"", 19, "fields.status.codes.I", "is not one of active, inactive");
        refused("DD-MON-YY", "DD-QQ-YY", 17, "fields.date_of_birth.date", "is not a known form");
        refused(", pivot: 1927", "", 17, "fields.date_of_birth.date", "two-digit years");
        refused("windows-1252", "windows-9", 6, "source.encoding", "is not a known encoding");
        refused("VOTERS_*.txt", "VOTERS_{.txt", 4, "files", "is not a file name");
    }

    @Test
    void a_mapping_that_could_fill_no_row_is_refused() {
        InputAssert.refused(
                () -> MappingReader.read("m.yaml", GOOD.replaceAll("  status:.*\n", "")),
                "m.yaml",
                0,
                "",
                "says no column for status");
    }

    private static void refused(String part, String by, int line, String key, String reason) {
        InputAssert.refused(() -> MappingReader.read("m.yaml", GOOD.replace(part, by)), "m.yaml", line, key, reason);
    }
}
