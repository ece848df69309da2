package org.proviso.files.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.PersonName;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.YesNo;
import org.proviso.files.InputException;
import org.proviso.files.roll.RollReader;

/** Exports of five shapes are recognized, proposed and read as the office meant them. */
class OwnFilesTest {

    @TempDir
    Path folder;

    @Test
    void tabs_without_a_header_are_told_by_what_stands_in_the_columns() {
        Path file = OwnFiles.of("tab-without-header-20261101.txt");
        Recognized recognized = FileRecognizer.recognize(file, OwnFiles.YEAR);

        assertThat(recognized.form().delimiter()).isEqualTo(Delimiter.TAB);
        assertThat(recognized.form().header()).isFalse();
        assertThat(recognized.form().columns()).hasSize(12).startsWith("column 1", "column 2");
        assertThat(recognized.rows()).isEqualTo(3);
        Mapping mapping = OwnFiles.proposed(file);
        assertThat(mapping.files()).isEqualTo("tab-without-header-*.txt");
        assertThat(sources(mapping))
                .containsEntry("voter_id", "column 1")
                .containsEntry("date_of_birth", "column 5")
                .containsEntry("zip", "column 9")
                .containsEntry("status", "column 11")
                .containsEntry("registration_date", "column 12");
        Voter first = OwnFiles.voters(file, mapping, folder).get(0);
        assertThat(first.voterId()).hasToString("04417");
        assertThat(first.birthDate()).isEqualTo(LocalDate.of(1982, 4, 17));
        assertThat(first.registration().registeredOn()).isEqualTo(LocalDate.of(2006, 3, 11));
    }

    @Test
    void fixed_width_is_read_by_its_layout() {
        Path file = OwnFiles.of("fixed-width.dat");
        List<FixedColumn> layout = LayoutReader.read(OwnFiles.of("fixed-width-layout.csv"), warning -> {});
        Recognized recognized = FileRecognizer.recognize(file, layout, OwnFiles.YEAR);
        Mapping mapping = Proposal.of(ListKind.ROLL, "fixed-width.dat", recognized);

        List<Voter> voters = OwnFiles.voters(file, mapping, folder);

        assertThat(voters.get(1).name()).isEqualTo(new PersonName("VAN DER MEER", "KLAAS", "", ""));
        assertThat(voters.get(1).birthDate()).isEqualTo(LocalDate.of(1978, 11, 30));
        assertThat(voters)
                .extracting(voter -> voter.registration().status())
                .containsExactly(RollStatus.ACTIVE, RollStatus.INACTIVE, RollStatus.PENDING);
        assertThat(voters.get(2).residence().precinct()).isEqualTo("401");
    }

    @Test
    void a_whole_name_and_a_whole_address_fill_several_columns() {
        Path file = OwnFiles.of("whole-name.csv");

        List<Voter> voters = OwnFiles.voters(file, OwnFiles.proposed(file), folder);

        assertThat(voters.get(0).name()).isEqualTo(new PersonName("Hollis", "June", "Marie", "Jr"));
        assertThat(voters.get(0).residence().houseNumber()).isEqualTo("12 1/2");
        assertThat(voters.get(0).residence().street()).isEqualTo("N Bay St");
        assertThat(voters.get(0).residence().unit()).isEqualTo("Apt 4");
        assertThat(voters.get(0).residence().zip()).isEqualTo("49871-0021");
        assertThat(voters.get(1).name()).isEqualTo(new PersonName("De La Cruz", "Ana", "", ""));
        assertThat(voters.get(1).residence().street()).isEqualTo("County Rd 7");
        assertThat(voters.get(2).residence().city()).isEqualTo("Millbrook");
        assertThat(voters)
                .extracting(Voter::birthDate)
                .containsExactly(LocalDate.of(1958, 3, 4), LocalDate.of(1991, 9, 17), LocalDate.of(2002, 1, 9));
    }

    @Test
    void accents_in_windows_1252_come_through_and_a_street_is_put_together() {
        Path file = OwnFiles.of("windows-1252.csv");
        Recognized recognized = FileRecognizer.recognize(file, OwnFiles.YEAR);

        assertThat(recognized.form().encoding()).isEqualTo(Charset.forName("windows-1252"));
        assertThat(recognized.form().delimiter()).isEqualTo(Delimiter.SEMICOLON);
        List<Voter> voters = OwnFiles.voters(file, OwnFiles.proposed(file), folder);
        assertThat(voters.get(0).name()).isEqualTo(new PersonName("Ibáñez", "Íñigo", "", ""));
        assertThat(voters.get(1).residence().street()).isEqualTo("Cañón Rd");
    }

    @Test
    void slashes_and_one_letter_codes_are_read_and_what_does_not_fit_is_counted_and_refused_at_its_place() {
        Path file = OwnFiles.of("slashes-and-codes-2026-11-02.csv");
        Mapping mapping = OwnFiles.proposed(file);

        Preview preview = Conversion.preview(file, mapping, 2);

        assertThat(mapping.empty()).containsExactly("00/00/0000");
        assertThat(preview.rows()).isEqualTo(4);
        assertThat(preview.first()).hasSize(2);
        assertThat(preview.refused()).isEqualTo(2);
        assertThat(preview.misfits())
                .containsExactly(
                        new Misfit("date_of_birth", "DOB", "13/45/1990", 1, 5, true),
                        new Misfit("status", "STS", "Z", 1, 5, true));
        Converted converted = OwnFiles.converted(file, mapping, folder);
        InputException told = converted.told(
                catchThrowableOfType(InputException.class, () -> RollReader.read(converted.file(), warning -> {})));
        assertThat(told.file()).isEqualTo("slashes-and-codes-2026-11-02.csv");
        assertThat(told.line()).isEqualTo(5);
        assertThat(told.column()).isEqualTo("DOB");
        assertThat(told.reason())
                .startsWith("\"13/45/1990\" is not a date")
                .endsWith("(read as date_of_birth from MM/DD/YYYY)");
    }

    @Test
    void the_good_rows_of_slashes_and_codes_are_what_the_office_meant() {
        Path file = OwnFiles.write(
                folder,
                "good.csv",
                "VUID,LNAME,FNAME,MNAME,DOB,STS,REG_DT,HAVA_ID,SSN4\n700001,ARCHER,BEATRICE,,1/5/1944,A,10/07/1988,N,1234\n"
                        + "700003,CHEN,WEI,,07/20/1985,P,00/00/0000,Y,0071\n");

        List<Voter> voters = OwnFiles.voters(file, OwnFiles.proposed(file), folder);

        assertThat(voters.get(0).birthDate()).isEqualTo(LocalDate.of(1944, 1, 5));
        assertThat(voters.get(0).idRequired()).isEqualTo(YesNo.NO);
        assertThat(voters.get(1).registration().registeredOn()).isNull();
        assertThat(voters.get(1).idLast4()).isEqualTo("0071");
    }

    @Test
    void utf_16_with_a_mark_is_read() {
        Path file = OwnFiles.write(
                folder, "wide.txt", "\uFEFFVoter ID|Last Name|Status\n1|Núñez|A\n", StandardCharsets.UTF_16LE);

        assertThat(OwnFiles.voters(file, OwnFiles.proposed(file), folder)
                        .get(0)
                        .name()
                        .last())
                .isEqualTo("Núñez");
    }

    private static Map<String, String> sources(Mapping mapping) {
        return mapping.fields().stream()
                .collect(Collectors.toMap(FieldSource::field, source -> String.join("+", source.from())));
    }
}
