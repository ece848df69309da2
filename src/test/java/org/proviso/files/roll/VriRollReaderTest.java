package org.proviso.files.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.Shared;
import org.proviso.core.Entitlement;
import org.proviso.core.PersonName;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.files.SetAsideRow;

public class VriRollReaderTest {

    public static final String GOOD = """
            {"VoterRecord": [
              {"@type": "VRI.VoterRecord", "VoterStatus": "other", "OtherStatus": "pending", "HavaIdRequired": true,
               "Voter": {"@type": "VRI.Voter", "DateOfBirth": "1984-03-12",
                 "Name": {"@type": "VRI.Name", "LastName": "Kell", "FirstName": "Zo\u00eb", "MiddleName": ["May", "Q"]},
                 "PreviousName": {"@type": "VRI.Name", "LastName": "Moss", "FirstName": "Zo\u00eb"},
                 "Party": {"@type": "VRI.Party", "Name": "Blue", "Abbreviation": "B"},
                 "VoterId": [
                   {"@type": "VRI.VoterId", "Type": "ssn4", "StringValue": "0042"},
                   {"@type": "VRI.VoterId", "Type": "drivers-license", "StringValue": "D7"},
                   {"@type": "VRI.VoterId", "Type": "state-voter-registration-id", "StringValue": "V-7"}],
                 "VoterClassification": [
                   {"@type": "VRI.VoterClassification", "Assertion": "yes", "Type": "protected-voter"}],
                 "ResidenceAddress": {"@type": "addr.NumberedThoroughfareAddress_type",
                   "CompleteAddressNumber": {"@type": "x", "AddressNumber": "88",
                     "AddressNumberSuffix": {"@type": "x", "Value": "1/2"}},
                   "CompleteStreetName": {"@type": "x", "StreetName": "Sorrel",
                     "StreetNamePreDirectional": {"@type": "x", "Value": "N"},
                     "StreetNamePostType": {"@type": "x", "Value": "Ln"}},
                   "CompleteSubaddress": {"@type": "x", "SubaddressElement": [
                     {"@type": "x", "SubaddressType": "Apt", "SubaddressIdentifier": "3"}]},
                   "CompletePlaceName1": {"@type": "x", "PlaceName": [
                     {"@type": "x", "PlaceNameType": "County", "Value": "Alder"},
                     {"@type": "x", "PlaceNameType": "MunicipalJurisdiction", "Value": "Millbrook"}]},
                   "ZipCode": "49871"},
                 "MailingAddress": {"@type": "addr.GeneralAddressClass_type", "GeneralAddress": "PO Box 9",
                   "ZipCode": "49871"}},
               "Locality": [
                 {"@type": "VRI.ReportingUnit", "Type": "split-precinct", "Name": "A"},
                 {"@type": "VRI.ReportingUnit", "Type": "precinct", "Name": "Twelve", "ExternalIdentifier": [
                   {"@type": "VRI.ExternalIdentifier", "Type": "local-level", "Value": "12"}]}]}],
             "@type": "VRI.VoterRecordResults"}
            """;

    @TempDir
    Path folder;

    private final List<String> warnings = new ArrayList<>();
    private final List<Voter> loaded = new ArrayList<>();

    @Test
    void reads_a_voter_wherever_the_type_of_the_file_stands() throws IOException {
        assertThat(read(GOOD))
                .containsExactly(new Voter(
                        new VoterId("V-7"),
                        new PersonName("Kell", "Zo\u00eb", "May Q", ""),
                        LocalDate.of(1984, 3, 12),
                        new Voter.Residence("88 1/2", "N Sorrel Ln", "Apt 3", "Millbrook", "49871", "12", "A"),
                        new Voter.Registration(null, null, null, RollStatus.PENDING, "", null, null, Entitlement.FULL),
                        "0042",
                        "D7",
                        "B",
                        null,
                        YesNo.YES,
                        YesNo.UNKNOWN,
                        null,
                        "Zo\u00eb Moss",
                        true,
                        "PO Box 9, 49871",
                        ""));
        assertThat(warnings)
                .containsExactly(
                        "roll.json: this format has no registration date or channel; both are unknown for every voter");
    }

    @Test
    void sets_a_bad_record_aside_as_it_came_and_reads_on() throws IOException {
        String record = GOOD.substring(GOOD.indexOf("[\n") + 2, GOOD.lastIndexOf("],\n"));
        String bad = record.replace("1984-03-12", "soon").replace("V-7", "V-8");
        String empty = record.replace("\"Moss\"", "null").replace("V-7", "V-9");
        Path file = Files.writeString(
                folder.resolve("roll.json"), GOOD.replace(record, bad + "," + record + "," + record + "," + empty));
        List<SetAsideRow> aside = new ArrayList<>();
        VriRollReader.read(file, warnings::add, aside::add, loaded::add);
        assertThat(loaded).extracting(voter -> voter.voterId().value()).containsExactly("V-7");
        assertThat(aside)
                .extracting(SetAsideRow::column)
                .containsExactly(
                        "VoterRecord[1].Voter.DateOfBirth",
                        "VoterRecord[3]",
                        "VoterRecord[4].Voter.PreviousName.LastName");
        assertThat(aside.get(0).asItCame())
                .startsWith("{\"@type\":\"VRI.VoterRecord\"")
                .contains("\"soon\"");
        assertThat(aside.get(2).asItCame()).contains("\"LastName\":null");
    }

    @Test
    void reads_the_example_of_the_standard() {
        List<Voter> voters = VriRollReader.read(Shared.file("data/nist/vri/example-roll-record.json"), warnings::add);

        assertThat(voters).hasSize(1);
        Voter voter = voters.get(0);
        assertThat(voter.voterId().value()).isEqualTo("VR0000001");
        assertThat(voter.name()).isEqualTo(new PersonName("VOTERPERSON", "SAMPLE", "Q", "JR"));
        assertThat(voter.birthDate()).isEqualTo(LocalDate.of(1980, 2, 29));
        assertThat(voter.residence())
                .isEqualTo(new Voter.Residence("123", "EXAMPLE ST", "", "SAMPLEVILLE", "00000", "0007", ""));
        assertThat(voter.registration().status()).isEqualTo(RollStatus.ACTIVE);
        assertThat(voter.registration().registeredOn()).isNull();
        assertThat(voter.registration().channel()).isNull();
        assertThat(voter.idRequired()).isEqualTo(YesNo.NO);
    }

    @Test
    void refuses_the_published_request_with_one_error() {
        Path request = Shared.file("data/nist/vri/ohio_registration.json");

        refused(
                () -> loaded.addAll(VriRollReader.read(request, warnings::add)),
                "ohio_registration.json",
                2,
                "@type",
                "\"VRI.VoterRecordsRequest\" is not VRI.VoterRecordResults");
        assertThat(loaded).isEmpty();
        assertThat(warnings).isEmpty();
    }

    @Test
    void refuses_dates_that_are_no_dates() {
        fails(
                "1984-03-12",
                "1993-11-12T00:00:00",
                3,
                "VoterRecord[1].Voter.DateOfBirth",
                "\"1993-11-12T00:00:00\" is not a date");
        fails("1984-03-12", "2017-7-30", 3, "VoterRecord[1].Voter.DateOfBirth", "\"2017-7-30\" is not a date");
    }

    @Test
    void refuses_what_a_roll_cannot_do_without() {
        fails(
                "state-voter-registration-id",
                "state-id",
                3,
                "VoterRecord[1].Voter.VoterId",
                "has no id of type state-voter");
        fails("\"VoterStatus\": \"other\", ", "", 2, "VoterRecord[1].VoterStatus", "is missing");
        fails("\"pending\"", "\"asleep\"", 2, "VoterRecord[1].OtherStatus", "\"asleep\" is not one of active");
        fails(
                "\"LastName\": \"Kell\", \"FirstName\": \"Zo\u00eb\", ",
                "",
                4,
                "VoterRecord[1].Voter.Name",
                "has neither");
        fails(
                "\"ResidenceAddress\"",
                "\"PreviousResidenceAddress\"",
                3,
                "VoterRecord[1].Voter.ResidenceAddress",
                "is missing");
    }

    @Test
    void refuses_wrong_kinds_of_values() {
        fails(
                "\"HavaIdRequired\": true",
                "\"HavaIdRequired\": \"yes\"",
                2,
                "VoterRecord[1].HavaIdRequired",
                "is not true or false");
        fails("[\"May\", \"Q\"]", "\"May\"", 4, "VoterRecord[1].Voter.Name.MiddleName", "is not a list");
        fails("\"Kell\"", "7", 4, "VoterRecord[1].Voter.Name.LastName", "is not text");
        fails("\"Kell\"", "null", 4, "VoterRecord[1].Voter.Name.LastName", "is null; leave out unknown values");
        fails(
                "\"VRI.Name\", \"LastName\": \"Kell\"",
                "\"VRI.Party\"",
                4,
                "VoterRecord[1].Voter.Name.@type",
                "is not VRI.Name");
        fails(
                "\"DateOfBirth\"",
                "\"DateOfbirth\"",
                3,
                "VoterRecord[1].Voter.DateOfbirth",
                "is not a known key of VRI.Voter");
        fails(
                "{\"VoterRecord\"",
                "{\"VoterRecords\"",
                1,
                "VoterRecords",
                "is not a known key of VRI.VoterRecordResults");
    }

    @Test
    void refuses_a_file_that_is_not_one_json_object() throws IOException {
        failsAs("", 0, "", "is empty");
        failsAs("[]", 1, "", "is not a JSON object");
        failsAs("{}", 0, "", "is not marked as a VRI.VoterRecordResults");
        failsAs(GOOD + "{}", 32, "", "has text after its end");
        failsAs(GOOD.substring(0, GOOD.indexOf("\"Party\"")), 6, "", "is not JSON: ");
        failsAs("{\"@type\": \"VRI.VoterRecordResults\",\n\"@type\": \"x\"}", 2, "", "is not JSON: Duplicate");
        failsAs("{\"@type\": \"VRI.VoterRecordResults\",\n\"VoterRecord\": " + "[".repeat(99), 2, "", "is not JSON: ");
    }

    @Test
    void refuses_latin_1_with_its_line() throws IOException {
        failsAs(GOOD, StandardCharsets.ISO_8859_1, 4, "", "contains the byte EB, which is not UTF-8");
    }

    @Test
    void refuses_a_doubled_voter_id_and_names_both_records() throws IOException {
        String record = GOOD.substring(GOOD.indexOf("[\n") + 2, GOOD.lastIndexOf("],\n"));
        String text = "{\"@type\": \"VRI.VoterRecordResults\", \"VoterRecord\": [\n" + record + ",\n" + record + "]}";
        failsAs(text, 31, "VoterRecord[2]", "\"V-7\" appears twice, in the records on lines 2 and 31");
    }

    private void fails(String part, String other, int line, String key, String reason) {
        assertThat(GOOD).contains(part);
        try {
            failsAs(GOOD.replaceFirst(java.util.regex.Pattern.quote(part), other), line, key, reason);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void failsAs(String text, int line, String key, String reason) throws IOException {
        failsAs(text, StandardCharsets.UTF_8, line, key, reason);
    }

    private void failsAs(String text, Charset charset, int line, String key, String reason) throws IOException {
        Path file = Files.write(folder.resolve("roll.json"), text.getBytes(charset));
        refused(() -> loaded.addAll(VriRollReader.read(file, warnings::add)), "roll.json", line, key, reason);
        assertThat(loaded).as("nothing is loaded").isEmpty();
        assertThat(warnings).isEmpty();
    }

    private List<Voter> read(String text) throws IOException {
        return VriRollReader.read(Files.writeString(folder.resolve("roll.json"), text), warnings::add);
    }
}
