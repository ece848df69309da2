package org.proviso.files.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.MailBallot;
import org.proviso.core.VoterId;
import org.proviso.files.EnvelopeRows;
import org.proviso.files.InputException;
import org.proviso.files.roll.RollReaderTest;
import org.proviso.files.roll.VriRollReaderTest;

class ElectionFolderTest {

    private static final String MAIL = "voter_id,ballot_serial,issued_on,state,state_on\n";

    @TempDir
    Path folder;

    @BeforeEach
    void a_small_election() {
        write("election.yaml", ElectionYamlReaderTest.GOOD);
        write("contests.csv", "contest_id,title,district,level\nGOV,Governor,state,statewide\n");
        write("ballot-styles.csv", "ballot_style,contest_id\n7,GOV\n");
        write("precincts.csv", "precinct,split,ballot_style\n12,A,7\n12,B,7\n");
        write(
                "streets.csv",
                "low,high,parity,street,city,zip,precinct,split\n2,98,even,Sorrel Ln,Millbrook,49871,12,A\n");
        write("roll.csv", RollReaderTest.HEADER + "\n" + RollReaderTest.ADA + "\n");
        write("mail-ballots.csv", MAIL + "V1,S1,2026-10-09,void,\nV1,S2,2026-10-20,outstanding,\n");
        write("check-ins.csv", "voter_id,voting_location,at\nV1,Library,2026-11-03T18:52\n");
        write("transmittals.csv", "voting_location,seal_out,seal_in,issued,spoiled,returned\nLibrary,S1,S2,1,0,1\n");
        write(
                "envelopes.csv",
                EnvelopeRows.text(
                        Map.of("envelope_no", "E-2"), Map.of("envelope_no", "E-1", "ballot_style_cast", "7")));
    }

    @Test
    void reads_an_election() {
        ElectionFolder read = ElectionFolder.read(folder);

        assertThat(read.warnings()).isEmpty();
        assertThat(read.election().name()).isEqualTo("General Election");
        assertThat(read.contests()).hasSize(1);
        assertThat(read.styles()).extracting("style").containsExactly("7");
        assertThat(read.precincts()).hasSize(2);
        assertThat(read.streets()).hasSize(1);
        assertThat(read.voters().get(new VoterId("V1")).name().first()).isEqualTo("Ada");
        assertThat(read.mailBallots().get(new VoterId("V1")))
                .extracting(MailBallot::serial)
                .containsExactly("S1", "S2");
        assertThat(read.checkIns().get(new VoterId("V1"))).hasSize(1);
        assertThat(read.votedElsewhere()).isEmpty();
        assertThat(read.transmittals()).hasSize(1);
        assertThat(read.envelopes())
                .extracting("envelopeNo")
                .containsExactly(new EnvelopeNumber("E-2"), new EnvelopeNumber("E-1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "election.yaml",
                "contests.csv",
                "ballot-styles.csv",
                "precincts.csv",
                "streets.csv",
                "roll.csv",
                "mail-ballots.csv",
                "check-ins.csv",
                "transmittals.csv",
                "envelopes.csv"
            })
    void names_a_file_that_is_missing(String name) throws IOException {
        Files.delete(folder.resolve(name));
        fails(name, 0, "", "is missing from");
    }

    @Test
    void refuses_a_folder_that_is_not_there() {
        Path none = folder.resolve("none");
        refused(() -> ElectionFolder.read(none), none.toString(), 0, "", "is not a folder");
    }

    @Test
    void refuses_references_that_lead_nowhere() {
        write("ballot-styles.csv", "ballot_style,contest_id\n7,GOV\n7,SHERIFF\n");
        fails("ballot-styles.csv", 3, "contest_id", "\"SHERIFF\" is not in contests.csv");
        a_small_election();
        write("precincts.csv", "precinct,split,ballot_style\n12,A,7\n12,B,9\n");
        fails("precincts.csv", 3, "ballot_style", "\"9\" is not in ballot-styles.csv");
        a_small_election();
        write("streets.csv", "low,high,parity,street,city,zip,precinct,split\n2,98,even,Sorrel Ln,,,12,C\n");
        fails("streets.csv", 2, "precinct", "\"12 split C\" is not in precincts.csv");
        a_small_election();
        write("envelopes.csv", EnvelopeRows.text(Map.of("envelope_no", "E-1", "ballot_style_cast", "77")));
        fails("envelopes.csv", 2, "ballot_style_cast", "\"77\" is not in ballot-styles.csv");
    }

    @Test
    void names_every_row_whose_reference_leads_nowhere() {
        write("precincts.csv", "precinct,split,ballot_style\n12,A,8\n12,B,7\n12,C,9\n");
        InputException refused = catchThrowableOfType(InputException.class, () -> ElectionFolder.read(folder));
        assertThat(refused.all()).extracting(InputException::line).containsExactly(2, 4);
    }

    @Test
    void refuses_a_receipt_number_with_a_slip_where_they_have_a_check_digit() {
        write(
                "envelopes.csv",
                EnvelopeRows.text(
                        Map.of("envelope_no", "E-1", "receipt_no", "4817-2206-5"),
                        Map.of("envelope_no", "E-2"),
                        Map.of("envelope_no", "E-3", "receipt_no", "4817-2260-5")));
        assertThat(ElectionFolder.read(folder).envelopes()).hasSize(3);
        write("election.yaml", ElectionYamlReaderTest.GOOD + "receipts: check_digit\n");
        fails("envelopes.csv", 4, "receipt_no", "\"4817-2260-5\" has a wrong digit or two swapped digits");
        write("envelopes.csv", EnvelopeRows.text(Map.of("envelope_no", "E-1", "receipt_no", "481722065")));
        fails("envelopes.csv", 2, "receipt_no", "is not written as 4817-2206-5");
    }

    @Test
    void warns_of_a_receipt_number_on_several_envelopes_and_reads_them_all() {
        write(
                "envelopes.csv",
                EnvelopeRows.text(
                        Map.of("envelope_no", "E-1", "receipt_no", "ab-1"),
                        Map.of("envelope_no", "E-2"),
                        Map.of("envelope_no", "E-3"),
                        Map.of("envelope_no", "E-4", "receipt_no", "AB1")));
        ElectionFolder read = ElectionFolder.read(folder);
        assertThat(read.envelopes()).hasSize(4);
        assertThat(read.warnings())
                .containsExactly("envelopes.csv line 5: the receipt number of envelope \"E-4\" is also on \"E-1\"");
    }

    @Test
    void warns_of_records_about_people_who_are_not_on_the_roll() {
        write("mail-ballots.csv", MAIL + "V1,S1,,void,\nV8,S2,,late,\nV9,S3,,late,\n");
        write("check-ins.csv", "voter_id,voting_location,at\nV9,Library,2026-11-03T18:52\n");

        assertThat(warnings())
                .containsExactly(
                        "mail-ballots.csv: 2 rows name voters not on the roll, the first on line 3 (\"V8\")",
                        "check-ins.csv: 1 row names a voter not on the roll, the first on line 2 (\"V9\")");
    }

    @Test
    void warns_of_voters_in_a_precinct_nobody_knows() {
        write("roll.csv", RollReaderTest.HEADER + "\n" + RollReaderTest.ADA.replace(",12,", ",13,") + "\n");

        assertThat(warnings())
                .containsExactly("roll: 1 voter is in a precinct missing from precincts.csv, the first in \"13\"");
    }

    @Test
    void warns_of_a_signature_image_that_is_missing() {
        write("envelopes.csv", EnvelopeRows.text(Map.of("envelope_no", "E-1", "signature_image", "e1.png")));
        assertThat(warnings()).containsExactly("envelopes.csv line 2: signature image not found: \"e1.png\"");

        write("e1.png", "an image");
        assertThat(warnings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"../election.yaml", "/etc/hostname", "a/../../x.png"})
    void refuses_a_signature_image_outside_the_folder(String image) {
        write("envelopes.csv", EnvelopeRows.text(Map.of("envelope_no", "E-1", "signature_image", image)));
        fails("envelopes.csv", 2, "signature_image", "is not a file name inside the election folder");
    }

    @Test
    void warns_of_an_order_about_an_envelope_that_is_not_there() {
        write(
                "election.yaml",
                ElectionYamlReaderTest.GOOD
                        + "orders:\n  - {kind: hold, court: C, standing: final, envelopes: [E-1, E-7]}\n");
        assertThat(warnings())
                .containsExactly("election.yaml: an order names envelope \"E-7\", which is not in envelopes.csv");
    }

    @Test
    void reads_the_list_of_people_who_voted_elsewhere_where_there_is_one() {
        write(
                "voted-elsewhere.csv",
                "last_name,first_name,middle_name,suffix,date_of_birth,id_last4,drivers_license,county,how,on\nA,B,,,,,,Alder,,\n");
        assertThat(ElectionFolder.read(folder).votedElsewhere()).hasSize(1);
    }

    @Test
    void reads_a_roll_of_the_other_format_but_never_two_rolls() throws IOException {
        write("roll.json", VriRollReaderTest.GOOD.replace("V-7", "V1"));
        fails("roll.json", 0, "", "found beside roll.csv");

        Files.delete(folder.resolve("roll.csv"));
        assertThat(ElectionFolder.read(folder)
                        .voters()
                        .get(new VoterId("V1"))
                        .name()
                        .last())
                .isEqualTo("Kell");
    }

    private List<String> warnings() {
        return ElectionFolder.read(folder).warnings();
    }

    private void fails(String file, int line, String column, String reason) {
        refused(() -> ElectionFolder.read(folder), file, line, column, reason);
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
