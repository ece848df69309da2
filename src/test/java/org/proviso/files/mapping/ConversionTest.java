package org.proviso.files.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.InputAssert;
import org.proviso.files.InputException;
import org.proviso.files.roll.RollReader;

/** What a conversion does with files that are not as the mapping has them, and where errors behind it are told. */
class ConversionTest {

    private static final String ROWS = "ID,NAME,STS\n1,\"Ash, Ann\",A\n2,\"Elm, Eve\",I\n";

    @TempDir
    Path folder;

    @Test
    void a_file_whose_columns_were_moved_and_added_to_is_read_and_the_new_column_told() {
        Mapping mapping = mapping(ROWS);
        Path moved = OwnFiles.write(folder, "moved.csv", "STS,PHONE,ID,NAME\nA,555-0101,7,\"Oak, Olga\"\n");

        Converted converted = OwnFiles.converted(moved, mapping, folder);

        assertThat(RollReader.read(converted.file(), warning -> {})
                        .get(0)
                        .name()
                        .last())
                .isEqualTo("Oak");
        assertThat(converted.warnings())
                .containsExactly("moved.csv: the mapping does not know the columns PHONE; they were not read");
    }

    @Test
    void another_files_mapping_is_refused_with_the_columns_that_are_missing() {
        Mapping mapping = mapping(ROWS);
        Path other = OwnFiles.write(folder, "other.csv", "ID,FULL,CODE\n1,x,y\n");

        InputAssert.refused(
                () -> OwnFiles.converted(other, mapping, folder),
                "other.csv",
                1,
                "",
                "has no column NAME, STS, which mapping \"roll\" reads; its columns are ID, FULL, CODE");
    }

    @Test
    void an_empty_file_a_spreadsheet_and_bytes_that_are_no_text_are_refused() throws IOException {
        Path empty = OwnFiles.write(folder, "empty.csv", "");
        Path sheet = Files.write(folder.resolve("roll.xlsx"), new byte[] {'P', 'K', 3, 4, 20, 0});
        Path noText = Files.write(folder.resolve("roll.dbf"), new byte[] {3, 0, 1, 'A'});

        refused(empty, "is empty");
        refused(sheet, "is a spreadsheet or a zip file");
        refused(noText, "is not a text file");
        InputAssert.refused(() -> OwnFiles.converted(empty, mapping(ROWS), folder), "empty.csv", 0, "", "is empty");
    }

    @Test
    void a_file_of_one_column_is_recognized_as_such() {
        Path one = OwnFiles.write(folder, "one.csv", "Voter ID\n10001\n10002\n");

        Recognized recognized = FileRecognizer.recognize(one, OwnFiles.YEAR);

        assertThat(recognized.form().columns()).containsExactly("Voter ID");
        assertThat(OwnFiles.proposed(one).missing()).containsExactly("status");
    }

    @Test
    void doubled_and_unnamed_columns_are_told_apart() {
        Path file = OwnFiles.write(folder, "d.csv", "ID,DATE,DATE,,STATUS\n1,2001-01-01,2002-02-02,x,A\n");

        assertThat(FileRecognizer.recognize(file, OwnFiles.YEAR).form().columns())
                .containsExactly("ID", "DATE", "DATE (2)", "column 4", "STATUS");
    }

    @Test
    void a_row_of_another_width_is_told_with_its_own_count_and_line() {
        Mapping mapping = mapping(ROWS);
        Path file =
                OwnFiles.write(folder, "w.csv", "ID,NAME,STS\n\n1,\"Ash, Ann\",A\n2,Elm, Eve,I\n3,\"Fir, Flo\",A,\n");
        Converted converted = OwnFiles.converted(file, mapping, folder);

        InputException told = told(converted);

        assertThat(told.getMessage()).isEqualTo("w.csv line 4: has 4 fields but the header has 3");
        assertThat(Conversion.preview(file, mapping, 10).refused()).isEqualTo(1);
    }

    @Test
    void without_a_header_lines_are_told_as_they_stand_in_the_offices_file() {
        Mapping mapping = mapping("10001\t\tA\n10002\t\tI\n");
        Path file = OwnFiles.write(folder, "n.txt", "10001\t\"two\nlines\"\tA\n10002\t\tI\n10001\t\tA\n");
        Converted converted = OwnFiles.converted(file, mapping, folder);

        InputException told = told(converted);

        assertThat(told.line()).isEqualTo(4);
        assertThat(told.column()).isEqualTo("column 1");
        assertThat(told.reason()).startsWith("\"10001\" appears twice, in lines 1 and 4");
    }

    @Test
    void a_name_that_cannot_be_split_stays_whole_and_is_told() {
        Mapping mapping = mapping(ROWS);
        Path file = OwnFiles.write(folder, "s.csv", "ID,NAME,STS\n1,Cher,A\n2,Cher,I\n");
        Converted converted = OwnFiles.converted(file, mapping, folder);

        assertThat(RollReader.read(converted.file(), warning -> {})
                        .get(0)
                        .name()
                        .last())
                .isEqualTo("Cher");
        assertThat(converted.warnings())
                .containsExactly("s.csv line 2, column NAME: \"Cher\" does not fit and was read as it came as last_name"
                        + " (2 rows)");
    }

    @Test
    void bytes_of_another_encoding_than_the_mappings_are_refused() {
        Mapping mapping = mapping(ROWS);
        Path file = OwnFiles.write(folder, "l.csv", "ID,NAME,STS\n1,\"Peña, Ana\",A\n", StandardCharsets.ISO_8859_1);

        InputAssert.refused(
                () -> OwnFiles.converted(file, mapping, folder),
                "l.csv",
                2,
                "",
                "contains the byte F1, which is not UTF-8");
    }

    @Test
    void the_same_file_twice_gives_the_same_bytes() throws IOException {
        Path file = OwnFiles.write(folder, "twice.csv", ROWS);
        Path first =
                Conversion.write(file, mapping(ROWS), folder.resolve("one.csv")).file();
        Path second =
                Conversion.write(file, mapping(ROWS), folder.resolve("two.csv")).file();

        assertThat(first).hasSameBinaryContentAs(second);
        assertThat(Files.readAllLines(first)).hasSize(3);
    }

    private Mapping mapping(String rows) {
        return OwnFiles.proposed(OwnFiles.write(folder, "roll.txt", rows));
    }

    private static InputException told(Converted converted) {
        return converted.told(
                catchThrowableOfType(InputException.class, () -> RollReader.read(converted.file(), warning -> {})));
    }

    private static void refused(Path file, String reason) {
        InputAssert.refused(
                () -> FileRecognizer.recognize(file, OwnFiles.YEAR),
                file.getFileName().toString(),
                0,
                "",
                reason);
    }
}
