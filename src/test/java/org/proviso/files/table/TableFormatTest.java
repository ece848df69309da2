package org.proviso.files.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A list as a file, read back. */
class TableFormatTest {

    private static final TableHead HEAD = new TableHead(
            "Court orders",
            List.of(new TableHead.About("Election", "General"), new TableHead.About("Filter", "=none")),
            List.of(TableColumn.text("Envelope"), TableColumn.figures("Ballots"), TableColumn.text("ZIP")));

    private static byte[] written(TableFormat format, Consumer<TableRows> rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(HEAD, out, rows);
        return out.toByteArray();
    }

    @Test
    void both_files_say_what_they_are_about_and_have_the_headings_and_the_rows() throws IOException {
        Consumer<TableRows> rows = to -> {
            to.row(List.of("0012", "1,204", "01234"));
            to.row(List.of("G-1, \"two\"\nlines é", "none", ""));
        };
        ReadList csv = ReadList.csv(written(TableFormat.CSV, rows), 2);
        ReadList xlsx = ReadList.xlsx(written(TableFormat.XLSX, rows));
        assertThat(csv.about()).containsEntry("Election", "General").containsEntry("Filter", "'=none");
        assertThat(xlsx.about())
                .containsEntry("List", "Court orders")
                .containsEntry("Election", "General")
                .containsEntry("Filter", "=none");
        for (ReadList read : List.of(csv, xlsx)) {
            assertThat(read.headings()).containsExactly("Envelope", "Ballots", "ZIP");
            assertThat(read.rows())
                    .containsExactly(List.of("0012", "1204", "01234"), List.of("G-1, \"two\"\nlines é", "none", ""));
        }
        assertThat(xlsx.numbers()).containsExactly("1204");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\t=1", "\r=1"})
    void no_cell_is_a_formula(String cell) throws IOException {
        Consumer<TableRows> rows = to -> to.row(List.of(cell, cell.equals("-1") ? "-1" : cell, "x"));
        List<String> csv =
                ReadList.csv(written(TableFormat.CSV, rows), 2).rows().get(0);
        assertThat(csv.get(0)).isEqualTo("'" + cell);
        byte[] file = written(TableFormat.XLSX, rows);
        assertThat(ReadList.part(file, "xl/worksheets/sheet1.xml"))
                .doesNotContain("<f>")
                .contains("inlineStr");
        assertThat(ReadList.xlsx(file).numbers()).isEqualTo(cell.equals("-1") ? List.of("-1") : List.of());
        assertThat(csv.get(1)).isEqualTo(cell.equals("-1") ? "-1" : "'" + cell);
    }

    @Test
    void a_character_that_a_file_cannot_hold_is_left_out_and_a_cell_that_is_too_long_is_cut() throws IOException {
        ReadList xlsx = ReadList.xlsx(written(
                TableFormat.XLSX, to -> to.row(List.of("a\u0001b<&>\uFFFF", "1", "x".repeat(40_000)))));
        assertThat(xlsx.rows().get(0).get(0)).isEqualTo("ab<&>");
        assertThat(xlsx.rows().get(0).get(2)).hasSize(32_767).endsWith("…");
    }

    @Test
    void a_list_without_rows_has_its_headings() throws IOException {
        assertThat(ReadList.csv(written(TableFormat.CSV, to -> {}), 2).rows()).isEmpty();
        assertThat(ReadList.xlsx(written(TableFormat.XLSX, to -> {})).headings())
                .hasSize(3);
    }

    /** What is sent goes on while the rows come: at no moment is the file held. */
    @Test
    void a_hundred_thousand_rows_are_sent_as_they_come() throws IOException {
        for (TableFormat format : TableFormat.values()) {
            long[] sent = new long[1];
            long[] longest = new long[1];
            OutputStream counted = new OutputStream() {
                @Override
                public void write(int one) {
                    sent[0]++;
                }

                @Override
                public void write(byte[] some, int from, int length) {
                    sent[0] += length;
                }
            };
            format.write(HEAD, counted, to -> {
                for (int at = 0; at < 100_000; at++) {
                    long before = sent[0];
                    to.row(List.of("G-" + at, String.valueOf(at), Integer.toHexString(at * 7919)));
                    longest[0] = Math.max(longest[0], sent[0] - before);
                }
                assertThat(sent[0]).as(format.name()).isGreaterThan(500_000);
            });
            assertThat(longest[0]).as(format.name()).isLessThan(100_000);
        }
    }

    @Test
    void the_name_of_a_file_is_its_list() {
        assertThat(TableFormat.XLSX.fileName("Told another date than the meeting"))
                .isEqualTo("told-another-date-than-the-meeting.xlsx");
        assertThat(TableFormat.CSV.fileName("…")).isEqualTo("list.csv");
    }
}
