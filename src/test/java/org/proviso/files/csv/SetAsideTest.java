package org.proviso.files.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Voter;
import org.proviso.files.InputException;
import org.proviso.files.SetAsideCount;
import org.proviso.files.SetAsideRow;
import org.proviso.files.roll.RollReader;

/** Bad rows of an outside list are set aside as they came; what leaves in doubt where a row ends refuses the whole. */
class SetAsideTest {

    private static final String HEADER =
            "voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,precinct,"
                    + "registration_date,status,id_last4,drivers_license,party,id_required\n";

    @TempDir
    private Path folder;

    private final List<SetAsideRow> aside = new ArrayList<>();

    @Test
    void each_bad_row_is_set_aside_with_its_line_column_and_reason_and_the_rest_is_read() throws IOException {
        List<String> read = read(row("V1", "Kell", "1974-03-09") + row("V2", "\"Quill, \"\"Q\"\"\"", "1974-02-30")
                + "V3,short\n" + row("V1", "Moss", "") + row("V4", "Tarn", ""));
        assertThat(read).containsExactly("V1", "V4");
        assertThat(aside)
                .extracting(SetAsideRow::list, SetAsideRow::line, SetAsideRow::column, SetAsideRow::reason)
                .containsExactly(
                        tuple("roll.csv", 3, "date_of_birth", "\"1974-02-30\" is not a date (write it as 1990-12-31)"),
                        tuple("roll.csv", 4, "", "has 2 fields but the header has 18"),
                        tuple("roll.csv", 5, "voter_id", "\"V1\" appears twice, in lines 2 and 5"));
    }

    @Test
    void a_row_is_kept_as_it_came_quotes_and_all() throws IOException {
        String bad = row("V2", "\"Quill, \"\"Q\"\"\"", "\"1974\"");
        read(bad);
        assertThat(aside).extracting(SetAsideRow::asItCame).containsExactly(bad.strip());
    }

    @Test
    void a_row_over_two_lines_that_is_whole_is_kept_with_its_line_break() throws IOException {
        String bad = row("V2", "\"Quill\nMoss\"", "soon");
        read(bad);
        assertThat(aside).extracting(SetAsideRow::asItCame).containsExactly(bad.strip());
    }

    @Test
    void a_row_that_is_set_aside_does_not_take_the_number_from_a_good_one() throws IOException {
        assertThat(read(row("V1", "Kell", "soon") + row("V1", "Kell", "1974-03-09")))
                .containsExactly("V1");
        assertThat(aside).extracting(SetAsideRow::line).containsExactly(2);
    }

    @Test
    void a_quote_that_swallows_rows_refuses_the_whole_file() throws IOException {
        Path file = roll(row("V1", "\"Kell", "") + row("V2", "Moss", "") + row("V3", "x\",\"Tarn\"", ""));
        assertThatThrownBy(() -> RollReader.read(file, w -> {}, aside::add, voter -> {}))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("roll.csv line 2");
        assertThat(aside).isEmpty();
    }

    @Test
    void a_row_over_several_lines_with_too_few_fields_refuses_the_whole_file() throws IOException {
        Path file = roll("V1,\"Kell\n" + row("V2", "Moss", "").strip() + "\",x\n");
        assertThatThrownBy(() -> RollReader.read(file, w -> {}, aside::add, voter -> {}))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("check for an opening quote that is never closed");
    }

    @Test
    void a_quote_never_closed_bytes_that_are_no_text_and_a_missing_column_refuse_the_whole_file() throws IOException {
        Path unclosed = roll(row("V1", "Kell", "") + "V2,\"Moss\n");
        assertThatThrownBy(() -> RollReader.read(unclosed, w -> {}, aside::add, voter -> {}))
                .hasMessageContaining("never closed");
        Path latin = Files.write(
                folder.resolve("roll.csv"),
                (HEADER + row("V1", "Mu\u00f1oz", "")).getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> RollReader.read(latin, w -> {}, aside::add, voter -> {}))
                .hasMessageContaining("not UTF-8");
        Path headless = Files.writeString(
                folder.resolve("roll.csv"), HEADER.replace(",status,", ",state,") + row("V1", "Kell", ""));
        assertThatThrownBy(() -> RollReader.read(headless, w -> {}, aside::add, voter -> {}))
                .hasMessageContaining("missing from the header");
        assertThat(aside).isEmpty();
    }

    @Test
    void a_good_file_reads_the_same() throws IOException {
        Path file = roll(row("V1", "Kell", "1974-03-09") + row("V2", "\"Moss, Jr\"", ""));
        List<Voter> strict = RollReader.read(file, w -> {});
        List<Voter> read = new ArrayList<>();
        RollReader.read(file, w -> {}, aside::add, read::add);
        assertThat(read).isEqualTo(strict).hasSize(2);
        assertThat(aside).isEmpty();
    }

    @Test
    void many_bad_rows_go_straight_to_the_file() throws IOException {
        Path file = folder.resolve("roll.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(HEADER);
            for (int i = 0; i < 200_000; i++) {
                out.write(row("V" + i % 100, "Kell", i < 100 ? "" : i % 2 == 0 ? "soon" : ""));
            }
        }
        Path target = folder.resolve("aside.csv");
        int[] good = new int[1];
        Map<String, Integer> counts = SetAsideFile.during(target, out -> {
            SetAsideCount count = new SetAsideCount(out);
            RollReader.read(file, w -> {}, count, voter -> good[0]++);
            return count.counts();
        });
        assertThat(good[0]).isEqualTo(100);
        assertThat(counts).containsExactly(Map.entry("roll.csv", 199_900));
        List<String> lines = Files.readAllLines(target);
        assertThat(lines).hasSize(199_901);
        assertThat(lines.get(0)).isEqualTo("list,line,column,reason,row");
        assertThat(lines.get(1)).startsWith("roll.csv,102,date_of_birth,");
    }

    @Test
    void a_file_refused_after_all_leaves_the_older_one() throws IOException {
        Path target = Files.writeString(folder.resolve("aside.csv"), "older");
        Path file = roll(row("V1", "Kell", "soon") + "V2,\"Moss\n");
        assertThatThrownBy(() -> SetAsideFile.during(target, out -> {
                    RollReader.read(file, w -> {}, out, voter -> {});
                    return 0;
                }))
                .isInstanceOf(InputException.class);
        assertThat(target).hasContent("older");
        assertThat(Files.list(folder)).hasSize(2);
    }

    private List<String> read(String rows) throws IOException {
        List<String> read = new ArrayList<>();
        RollReader.read(
                roll(rows),
                w -> {},
                aside::add,
                voter -> read.add(voter.voterId().value()));
        return read;
    }

    private Path roll(String rows) throws IOException {
        return Files.writeString(folder.resolve("roll.csv"), HEADER + rows);
    }

    private static String row(String voterId, String lastName, String birth) {
        return voterId + "," + lastName + ",Ann,,," + birth
                + ",8,Elm St,,Millbrook,49871,P-1,2020-01-01,active,,,,no\n";
    }
}
