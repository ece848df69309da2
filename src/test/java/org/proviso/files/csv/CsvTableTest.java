package org.proviso.files.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.RollStatus;
import org.proviso.core.YesNo;

class CsvTableTest {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("id", "name", "note?").unique("id");

    @TempDir
    Path folder;

    private final List<String> warnings = new ArrayList<>();
    private final List<String> loaded = new ArrayList<>();

    @Test
    void reads_rows_with_their_lines() throws IOException {
        NumberedRows<String> rows = read("id,name\n1,Ada\n\n2,\"Bo\nb\"\n3,Cy");

        assertThat(rows.values()).containsExactly("1 Ada ", "2 Bo\nb ", "3 Cy ");
        assertThat(List.of(rows.line(0), rows.line(1), rows.line(2))).containsExactly(2, 4, 6);
        assertThat(warnings).isEmpty();
    }

    @Test
    void takes_a_byte_order_mark_windows_line_ends_and_any_order_of_columns() throws IOException {
        assertThat(read("\uFEFFnote,name,id\r\nx,Zoë,7\r\n").values()).containsExactly("7 Zoë x");
    }

    @Test
    void reads_quotes_commas_and_doubled_quotes() throws IOException {
        assertThat(read("id,name\n1,\"a,\"\"b\"\"\"\n2,5\" nail\n").values())
                .containsExactly("1 a,\"b\" ", "2 5\" nail ");
    }

    @Test
    void names_unknown_columns_in_one_warning() throws IOException {
        read("id,shoe,name,hat\n1,,Ada,\n2,,Bo,\n");

        assertThat(warnings).containsExactly("t.csv: unknown columns were ignored: shoe, hat");
    }

    @Test
    void takes_a_file_with_a_header_alone() throws IOException {
        assertThat(read("id,name\n").values()).isEmpty();
    }

    @Test
    void refuses_a_file_that_is_not_there() {
        refused(() -> CsvTable.open(folder.resolve("no.csv"), COLUMNS, warnings::add), "no.csv", 0, "", "is missing");
    }

    @Test
    void refuses_an_empty_file() {
        fails("", 0, "", "is empty");
        fails("\uFEFF", 0, "", "is empty");
        fails("\n\n", 0, "", "is empty");
    }

    @Test
    void refuses_a_missing_column() {
        fails("id,note\n1,x\n", 1, "name", "is missing from the header");
    }

    @Test
    void refuses_a_doubled_column() {
        fails("id,name,id\n1,x,2\n", 1, "id", "appears twice in the header (columns 1 and 3)");
    }

    @Test
    void refuses_a_column_without_a_name() {
        fails("id,name,\n1,x,\n", 1, "", "column 3 of the header has no name");
    }

    @Test
    void refuses_a_short_and_a_long_row() {
        fails("id,name\n1,Ada\n2\n", 3, "", "has 1 field but the header has 2");
        fails("id,name\n1,Ada\n2,Bo,x\n", 3, "", "has 3 fields but the header has 2");
    }

    @Test
    void refuses_latin_1_with_the_line_of_the_byte() {
        String text = "id,name\r\n1,Ada\r\n2,Zoë\r\n3,Cy\r\n";
        failsAs(
                text.getBytes(StandardCharsets.ISO_8859_1),
                3,
                "",
                "contains the byte EB, which is not UTF-8; the file may be Latin-1");
        failsAs("id,n\u00e4me\n".getBytes(Charset.forName("windows-1252")), 1, "", "contains the byte E4");
    }

    @Test
    void refuses_utf_16_by_name() {
        failsAs("\uFEFFid,name\n".getBytes(StandardCharsets.UTF_16LE), 1, "", "is in UTF-16");
        failsAs("id,name\n".getBytes(StandardCharsets.UTF_16), 1, "", "is in UTF-16");
    }

    @Test
    void refuses_text_cut_off_within_a_character() {
        byte[] whole = "id,name\n1,Zo\u00eb".getBytes(StandardCharsets.UTF_8);
        failsAs(java.util.Arrays.copyOf(whole, whole.length - 1), 2, "", "contains the byte C3, which is not UTF-8");
    }

    @Test
    void refuses_a_nul_byte_with_its_line() {
        fails("id,name\n1,Ada\n2,B\0o\n", 3, "", "contains a NUL byte");
    }

    @Test
    void finds_a_bad_byte_beyond_the_first_buffer() {
        String rows = "id,name\n" + numbered(20_000, "Ada") + "x,";
        byte[] bytes = (rows + "\u00eb\n").getBytes(StandardCharsets.ISO_8859_1);
        failsAs(bytes, 20_002, "", "contains the byte EB");
    }

    @Test
    void reports_an_earlier_bad_row_before_a_later_bad_byte() {
        failsAs("id,name\n1\n2,\u00eb\n".getBytes(StandardCharsets.ISO_8859_1), 2, "", "has 1 field");
    }

    @Test
    void refuses_a_quote_that_is_never_closed() {
        fails("id,name\n1,Ada\n2,\"Bo\n3,Cy\n", 3, "", "this row has an opening quote that is never closed");
    }

    @Test
    void refuses_text_after_a_closing_quote() {
        fails("id,name\n1,Ada\n2,\"Bo\" b\n", 3, "", "text follows a closing quote");
    }

    @Test
    void says_what_is_wrong_with_a_quote_after_rows_over_several_lines() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            String above = ("id,name|1,\"Ada|\"\"of|Mill\"\" Pond\"|2,B\"o|").replace("|", end);
            fails(above + "3,\"C\"y" + end, 6, "", "text follows a closing quote");
            fails(above + "3,\"\"\"" + end + "4,Di" + end, 6, "", "an opening quote that is never closed");
        }
    }

    @Test
    void refuses_a_doubled_key_and_names_both_lines() {
        fails("id,name\n7,Ada\n8,Bo\n7,Cy\n", 4, "id", "\"7\" appears twice, in lines 2 and 4");
    }

    @Test
    void finds_a_doubled_key_among_very_many() {
        String rows = "id,name\n" + numbered(100_000, "Ada");
        fails(rows + "99999,Bo\n", 100_002, "id", "in lines 100001 and 100002");
        fails(rows + "5,Bo\n", 100_002, "id", "in lines 7 and 100002");
    }

    @Test
    void takes_two_keys_of_one_hash_that_differ_on_a_second_look() throws IOException {
        try (CsvTable table =
                CsvTable.open(write("id\n7\n".getBytes(StandardCharsets.UTF_8)), CsvColumns.of("id"), w -> {})) {
            table.next();
            UniqueKey other = new UniqueKey("t.csv", List.of("id"), table.row(), (line, key) -> List.of("8"));
            other.check();
            other.check();
            UniqueKey same = new UniqueKey("t.csv", List.of("id"), table.row(), (line, key) -> List.of("7"));
            same.check();
            refused(same::check, "t.csv", 2, "id", "\"7\" appears twice");
        }
    }

    @Test
    void takes_many_different_keys_and_rows_without_a_key() throws IOException {
        assertThat(read("id,name\n" + numbered(100_000, "Ada") + ",x\n,y\n").values())
                .hasSize(100_002);
    }

    @Test
    void counts_lines_within_quoted_cells_when_it_names_a_doubled_key() {
        fails("id,name\n1,\"a\nb\"\n2,x\n1,y\n", 5, "id", "in lines 2 and 5");
    }

    @Test
    void reads_typed_cells() throws IOException {
        Path file = write(
                "d,t,n,y,c,w\n1990-12-31,2026-11-03T18:52,12,yes,active,a;b\n,,,,,\n".getBytes(StandardCharsets.UTF_8));
        CsvColumns columns = CsvColumns.of("d", "t", "n", "y", "c", "w", "absent?");
        try (CsvTable table = CsvTable.open(file, columns, warnings::add)) {
            table.next();
            CsvRow row = table.row();
            assertThat(row.date("d")).isEqualTo(LocalDate.of(1990, 12, 31));
            assertThat(row.dateTime("t")).isEqualTo(LocalDateTime.of(2026, 11, 3, 18, 52));
            assertThat(row.whole("n")).isEqualTo(12);
            assertThat(row.yesNo("y")).isEqualTo(YesNo.YES);
            assertThat(row.code(4, RollStatus.class)).isEqualTo(RollStatus.ACTIVE);
            assertThat(row.words("w")).containsExactly("a", "b");
            table.next();
            assertThat(row.date("d")).isNull();
            assertThat(row.dateTime("t")).isNull();
            assertThat(row.whole("n")).isNull();
            assertThat(row.yesNo("y")).isEqualTo(YesNo.UNKNOWN);
            assertThat(row.code("c", RollStatus.class, RollStatus.PENDING)).isEqualTo(RollStatus.PENDING);
            assertThat(row.words("w")).isEqualTo(Set.of());
            assertThat(row.text("absent")).isEmpty();
            assertThat(table.next()).isFalse();
        }
    }

    @Test
    void writes_the_whole_story_on_one_line() throws IOException {
        Path file = write("date_of_birth\n13/45/1990\n".getBytes(StandardCharsets.UTF_8));
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> CsvTable.read(
                        file, CsvColumns.of("date_of_birth"), warnings::add, row -> row.date("date_of_birth"))))
                .hasMessage(
                        "t.csv line 2, column date_of_birth: \"13/45/1990\" is not a date (write it as 1990-12-31)");
    }

    private static String numbered(int count, String name) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < count; i++) {
            rows.append(i).append(',').append(name).append('\n');
        }
        return rows.toString();
    }

    private NumberedRows<String> read(String text) throws IOException {
        return read(write(text.getBytes(StandardCharsets.UTF_8)));
    }

    private NumberedRows<String> read(Path file) {
        return CsvTable.read(
                file, COLUMNS, warnings::add, row -> row.text("id") + " " + row.text("name") + " " + row.text("note"));
    }

    private void fails(String text, int line, String column, String reason) {
        failsAs(text.getBytes(StandardCharsets.UTF_8), line, column, reason);
    }

    private void failsAs(byte[] bytes, int line, String column, String reason) {
        refused(() -> loaded.addAll(read(write(bytes)).values()), "t.csv", line, column, reason);
        assertThat(loaded).as("nothing is loaded").isEmpty();
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("t.csv"), bytes);
    }
}
