package org.proviso.files.roll;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.files.csv.CsvColumns;

/** The quick reader takes plain files whole and leaves all others to the careful one. */
class RollScanTest {

    private static final CsvColumns COLUMNS = CsvColumns.of(
                    "voter_id",
                    "last_name",
                    "first_name",
                    "date_of_birth",
                    "city?",
                    "middle_name?",
                    "suffix?",
                    "former_name?",
                    "house_number?",
                    "street?",
                    "unit?",
                    "zip?",
                    "id_last4?",
                    "drivers_license?")
            .unique("voter_id");
    private static final String HEADER = "voter_id,last_name,first_name,date_of_birth,city\n";

    @TempDir
    private Path folder;

    @Test
    void plain_files_are_taken_with_every_row() throws IOException {
        assertThat(rows(HEADER)).isZero();
        assertThat(rows(HEADER + "V1,Ruiz,Ana,1974-03-09,Harrow\n\nV2,Li,Bo,,\n"))
                .isEqualTo(2);
        assertThat(rows(HEADER + "V1,Ruiz,Ana,1974-03-09,Harrow\nV2,Li,Bo,,")).isEqualTo(2);
        assertThat(rows(HEADER.replace("\n", "\r\n") + "V1,Ruiz,Ana,1974-03-09,\r\n\r\nV2,Li,\"Bo\",,\"A\"\r\n"))
                .isEqualTo(2);
        assertThat(rows("\ufeff" + HEADER + "V1,\"Ruiz, Jr\",\"Ana \"\"Nan\"\"\",1974-03-09,N\u00fa\u00f1ez\n"))
                .isEqualTo(1);
    }

    @Test
    void many_rows_in_many_stretches_are_each_taken_once() throws IOException {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < 30_000; i++) {
            text.append("V")
                    .append(i)
                    .append(",Ruiz,Ana,1974-03-09,")
                    .append("x".repeat(i % 40))
                    .append("\n");
        }
        assertThat(rows(text.toString())).isEqualTo(30_000);
        assertThat(rows(text + "V17,Ruiz,Ana,1974-03-09,\n")).isEqualTo(-1);
    }

    @Test
    void what_is_out_of_the_ordinary_is_left_to_the_careful_reader() throws IOException {
        for (String row : List.of(
                "V1,Ruiz,Ana,1974-03-09",
                "V1,Ruiz,Ana,1974-03-09,a,b",
                ",Ruiz,Ana,1974-03-09,",
                " V1,Ruiz,Ana,1974-03-09,",
                "V1,Ruiz,Ana,1974-02-30,",
                "V1,Ruiz,Ana,3/9/1974,",
                "V1,\"Ru\niz\",Ana,1974-03-09,",
                "V1,\"Ruiz,Ana,1974-03-09,",
                "V1,Ru\"iz,Ana,1974-03-09,",
                "V1,\"Ruiz\"x,Ana,1974-03-09,",
                "V1,Ru\riz,Ana,1974-03-09,",
                "V1,Ru\0iz,Ana,1974-03-09,",
                "V2,Ruiz,Ana,1974-03-09,")) {
            assertThat(rows(HEADER + "V2,Li,Bo,,\n" + row + "\nV3,Li,Bo,,\n"))
                    .as(row)
                    .isEqualTo(-1);
        }
    }

    @Test
    void bytes_that_are_not_utf8_are_left_to_the_careful_reader() throws IOException {
        Path file = folder.resolve("latin.csv");
        Files.write(file, (HEADER + "V1,N\u00fa\u00f1ez,Ana,1974-03-09,\n").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(RollScan.read(file, COLUMNS, 2, warning -> {}, rows -> {})).isEmpty();
    }

    /** How many voters the quick reader gives, -1 where it gives up. */
    private int rows(String text) throws IOException {
        Path file = folder.resolve("roll.csv");
        Files.writeString(file, text);
        AtomicLong heard = new AtomicLong();
        return RollScan.read(file, COLUMNS, 2, warning -> {}, heard::set)
                .map(RollIndex::of)
                .map(RollIndex::size)
                .orElse(-1);
    }
}
