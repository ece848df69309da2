package org.proviso.files.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.InputException;
import org.proviso.files.roll.RollReader;

/** A roll with bad rows is refused once, with all of them named. */
class BadRowFinderTest {

    private static final String HEADER =
            "voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,precinct,"
                    + "registration_date,status,id_last4,drivers_license,party,id_required\n";

    @TempDir
    private Path folder;

    @Test
    void every_bad_row_is_named_with_its_line_column_and_reason() throws IOException {
        InputException refused = refused(row("V1", "1974-03-09", "active") + row("V2", "1974-02-30", "active")
                + "V3,short\n" + row("V4", "", "gone") + row("V1", "", "active") + row("V5", "", "active"));
        assertThat(refused.line()).isEqualTo(3);
        assertThat(refused.column()).isEqualTo("date_of_birth");
        assertThat(refused)
                .hasMessageContaining("4 rows have errors in all")
                .hasMessageContaining("line 4: has 2 fields but the header has 18")
                .hasMessageContaining("line 5, column status: \"gone\" is not one of")
                .hasMessageContaining("line 6, column voter_id: \"V1\" appears twice");
    }

    @Test
    void a_quote_that_is_never_closed_ends_the_look() throws IOException {
        InputException refused =
                refused(row("V2", "1974-02-30", "active") + "\"V3" + row("V4", "", "gone") + row("V5", "", "x"));
        assertThat(refused).hasMessageContaining("2 rows have errors in all").hasMessageContaining("never closed");
    }

    @Test
    void many_bad_rows_are_counted_and_the_first_named() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            rows.append(row("V" + i, "bad", "active"));
        }
        assertThat(refused(rows.toString()))
                .hasMessageContaining("200 rows have errors in all")
                .hasMessageEndingWith("; and 100 more");
    }

    @Test
    void each_bad_row_can_be_asked_for_by_itself() throws IOException {
        InputException refused = refused(row("V1", "bad", "active") + row("V2", "", "gone"));
        assertThat(refused.all())
                .extracting(InputException::line, InputException::column)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(2, "date_of_birth"),
                        org.assertj.core.api.Assertions.tuple(3, "status"));
        assertThat(refused.all().get(0))
                .hasMessage("roll.csv line 2, column date_of_birth: \"bad\" is not a date (write it as 1990-12-31)");
        assertThat(refused.untold()).isZero();
    }

    @Test
    void a_row_longer_than_any_may_be_ends_the_look() throws IOException {
        InputException refused =
                refused(row("V2", "1974-02-30", "active") + "x".repeat(3_000_000) + "\n" + row("V4", "", "gone"));
        assertThat(refused.all()).extracting(InputException::line).containsExactly(2, 3);
        assertThat(refused.all().get(1).reason()).contains("longer than the limit");
    }

    @Test
    void one_bad_row_is_told_as_ever() throws IOException {
        assertThat(refused(row("V1", "bad", "active")))
                .hasMessage("roll.csv line 2, column date_of_birth: \"bad\" is not a date (write it as 1990-12-31)");
    }

    private static String row(String id, String born, String status) {
        return id + ",Ruiz,Ana,,," + born + ",12,Quarry St,,Harrow,49871,P-1,2016-02-01," + status + ",,,,no\n";
    }

    private InputException refused(String rows) throws IOException {
        Path file = folder.resolve("roll.csv");
        Files.writeString(file, HEADER + rows);
        return catchThrowableOfType(InputException.class, () -> RollReader.read(file, warning -> {}, voter -> {}));
    }
}
