package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Address;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Contest;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.MailBallot;
import org.proviso.core.PersonName;
import org.proviso.core.PrecinctPart;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.StreetSegment;
import org.proviso.core.Transmittal;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.files.csv.NumberedRows;
import org.proviso.files.election.BallotStyleReader;
import org.proviso.files.election.CheckInReader;
import org.proviso.files.election.ContestReader;
import org.proviso.files.election.EnvelopeReader;
import org.proviso.files.election.MailBallotReader;
import org.proviso.files.election.PrecinctReader;
import org.proviso.files.election.StreetReader;
import org.proviso.files.election.TransmittalReader;
import org.proviso.files.election.VotedElsewhereReader;

class ReaderTest {

    @TempDir
    Path folder;

    private final List<String> warnings = new ArrayList<>();

    @Test
    void reads_contests() {
        assertThat(good(ContestReader::read, "contest_id,title,district,level\nGOV,Governor,state,statewide\n"))
                .containsExactly(new Contest("GOV", "Governor", "state", Contest.Level.STATEWIDE));
        bad(ContestReader::read, "contest_id,title,district,level\nGOV,Governor,state,\n", 2, "level", "is empty");
        bad(
                ContestReader::read,
                "contest_id,title,district,level\nA,x,d,local\nA,y,d,local\n",
                3,
                "contest_id",
                "twice");
    }

    @Test
    void groups_the_rows_of_a_ballot_style() {
        String header = "ballot_style,contest_id,party\n";
        NumberedRows<BallotStyleReader.StyleContest> rows =
                read(BallotStyleReader::read, header + "7,GOV,\n8,GOV,B\n7,CLERK,\n");

        assertThat(BallotStyleReader.styles(rows))
                .containsExactly(
                        new BallotStyle("7", "", Set.of("GOV", "CLERK")), new BallotStyle("8", "B", Set.of("GOV")));
        bad(
                BallotStyleReader::read,
                header + "7,GOV,\n7,GOV,\n",
                3,
                "ballot_style + contest_id",
                "\"7 GOV\" appears twice");
        bad(
                (file, warn) -> BallotStyleReader.styles(BallotStyleReader.read(file, warn)),
                header + "7,GOV,A\n7,CLERK,B\n",
                3,
                "party",
                "\"B\", but style 7 had \"A\" earlier");
    }

    @Test
    void reads_precincts() {
        assertThat(good(PrecinctReader::read, "precinct,ballot_style\n12,7\n"))
                .containsExactly(new PrecinctPart("12", "", "7", "", ""));
        bad(
                PrecinctReader::read,
                "precinct,split,ballot_style\n12,A,7\n12,B,7\n12,A,8\n",
                4,
                "precinct + split",
                "lines 2 and 4");
        bad(PrecinctReader::read, "precinct,ballot_style\n12 ,7\n", 2, "precinct", "has a space before or after it");
    }

    @Test
    void reads_streets() {
        String header = "low,high,parity,street,city,zip,precinct\n";
        assertThat(good(StreetReader::read, header + "2,98,even,Sorrel Ln,Millbrook,49871,12\n"))
                .containsExactly(new StreetSegment(
                        2, 98, StreetSegment.Parity.EVEN, "Sorrel Ln", "Millbrook", "49871", "12", ""));
        bad(StreetReader::read, header + "98,2,even,Sorrel Ln,,,12\n", 2, "high", "\"2\" is below the low number, 98");
        bad(StreetReader::read, header + "2a,98,even,Sorrel Ln,,,12\n", 2, "low", "\"2a\" is not a whole number");
        bad(StreetReader::read, header + "2,9999999999,even,Sorrel Ln,,,12\n", 2, "high", "is not a whole number");
    }

    @Test
    void reads_mail_ballots() {
        String header = "voter_id,ballot_serial,issued_on,state,state_on\n";
        assertThat(good(
                        MailBallotReader::read,
                        header + "V1,S1,2026-10-09,void,2026-10-20\nV1,S2,2026-10-20,outstanding,\n"))
                .containsExactly(
                        new MailBallot(
                                new VoterId("V1"),
                                "S1",
                                LocalDate.of(2026, 10, 9),
                                MailBallot.State.VOID,
                                LocalDate.of(2026, 10, 20)),
                        new MailBallot(
                                new VoterId("V1"),
                                "S2",
                                LocalDate.of(2026, 10, 20),
                                MailBallot.State.OUTSTANDING,
                                null));
        bad(
                MailBallotReader::read,
                header + "V1,S1,,void,\nV1,S1,,late,\n",
                3,
                "voter_id + ballot_serial",
                "lines 2 and 3");
        bad(
                MailBallotReader::read,
                header + "V1,S1,10/09/2026,void,\n",
                2,
                "issued_on",
                "\"10/09/2026\" is not a date");
    }

    @Test
    void what_a_voter_wrote_as_date_of_birth_is_never_a_bad_row() {
        String rows = EnvelopeRows.text(
                Map.of("envelope_no", "E1", "date_of_birth", "1984-03-12"),
                Map.of("envelope_no", "E2", "date_of_birth", "13/40/1980"),
                Map.of("envelope_no", "E3", "date_of_birth", " 1980"),
                Map.of("envelope_no", "E4", "date_of_birth", "02/29/1935"),
                Map.of("envelope_no", "E5"));
        assertThat(read(EnvelopeReader::read, rows).values())
                .extracting(
                        envelope -> envelope.affirmation().birthDate(),
                        envelope -> envelope.affirmation().birthDateAsWritten())
                .containsExactly(
                        tuple(LocalDate.of(1984, 3, 12), ""),
                        tuple(null, "13/40/1980"),
                        tuple(null, "1980"),
                        tuple(null, "02/29/1935"),
                        tuple(null, ""));
        assertThat(warnings)
                .containsExactly(
                        "t.csv: the date of birth is kept as the voter wrote it, because it is not a date, on 3 envelopes, first on E2");
    }

    @Test
    void a_date_of_birth_in_another_form_is_the_files_mistake_and_refused() {
        for (String written : List.of("03/12/1984", "19840312", "March 12, 1984")) {
            bad(
                    EnvelopeReader::read,
                    EnvelopeRows.text(Map.of("envelope_no", "E1", "date_of_birth", "\"" + written + "\"")),
                    2,
                    "date_of_birth",
                    "is not a date (write it as 1990-12-31)");
        }
        bad(
                EnvelopeReader::read,
                EnvelopeRows.text(Map.of("envelope_no", "E1", "date_of_birth", "x".repeat(41))),
                2,
                "date_of_birth",
                "more than 40 characters");
    }

    @Test
    void reads_check_ins() {
        String header = "voter_id,voting_location,at,kind,ballot_issued,cancelled_at\n";
        LocalDateTime at = LocalDateTime.of(2026, 11, 3, 18, 52);
        assertThat(good(
                        CheckInReader::read,
                        header + "V1,Library,2026-11-03T18:52,,,\nV1,Hall,2026-11-03T18:52:00,provisional,no,\n"))
                .containsExactly(
                        new CheckIn(new VoterId("V1"), "Library", at, CheckIn.Kind.REGULAR, YesNo.UNKNOWN, null),
                        new CheckIn(new VoterId("V1"), "Hall", at, CheckIn.Kind.PROVISIONAL, YesNo.NO, null));
        bad(CheckInReader::read, header + "V1,Hall,2026-11-03 18:52,,,\n", 2, "at", "is not a local date and time");
        bad(CheckInReader::read, header + "V1,Hall,2026-11-03T24:52,,,\n", 2, "at", "is not a local date and time");
        bad(CheckInReader::read, header + "V1,Hall,,,,\n", 2, "at", "is empty");
        bad(
                CheckInReader::read,
                header + "V1,Hall,2026-11-03T18:52,,Y,\n",
                2,
                "ballot_issued",
                "\"Y\" is not yes or no");
    }

    @Test
    void reads_people_who_voted_elsewhere() {
        String header =
                "last_name,first_name,middle_name,suffix,date_of_birth,id_last4,drivers_license,county,how,on\n";
        assertThat(good(VotedElsewhereReader::read, header + "Dunmore,Ada,,,1984-03-12,0042,,Alder,mail,2026-10-20\n"))
                .containsExactly(new VotedElsewhere(
                        new PersonName("Dunmore", "Ada", "", ""),
                        LocalDate.of(1984, 3, 12),
                        "0042",
                        "",
                        "Alder",
                        "mail",
                        LocalDate.of(2026, 10, 20)));
    }

    @Test
    void reads_transmittals() {
        String header = "voting_location,seal_out,seal_in,supplied,issued,spoiled,returned\n";
        assertThat(good(TransmittalReader::read, header + "Library,S1,S2,,12,1,11\n"))
                .containsExactly(new Transmittal("Library", null, "", "S1", "S2", null, 12, 1, null, 11, null, null));
        bad(TransmittalReader::read, header + "Library,S1,S2,,12,,11\n", 2, "spoiled", "is empty");
        bad(
                TransmittalReader::read,
                header + "Library,S1,S2,-1,12,0,11\n",
                2,
                "supplied",
                "\"-1\" is not a whole number");
    }

    @Test
    void reads_an_envelope() {
        Envelope envelope = good(
                        EnvelopeReader::read,
                        EnvelopeRows.text(Map.of(
                                "envelope_no", "E-1",
                                "receipt_no", "R-1",
                                "cast_at", "2026-11-03T18:52",
                                "issue_reasons", "not_on_list;no_id",
                                "last_name", "Dunmore",
                                "residence_address_line", "88 Sorrel Ln",
                                "unit", "Apt 3",
                                "former_address_line", "4 Elm St",
                                "voter_signed", "mark",
                                "field_states", "zip=illegible;id_last4=left_blank")))
                .get(0);

        assertThat(envelope.receiptNo()).isEqualTo(new ReceiptNumber("R-1"));
        assertThat(envelope.source()).isEqualTo(Envelope.Source.POLL);
        assertThat(envelope.cast().at()).isEqualTo(LocalDateTime.of(2026, 11, 3, 18, 52));
        assertThat(envelope.cast().extendedHours()).isEqualTo(YesNo.UNKNOWN);
        assertThat(envelope.cast().issueReasons()).containsExactly("not_on_list", "no_id");
        assertThat(envelope.affirmation().residence()).isEqualTo(new Address("88 Sorrel Ln", "Apt 3", "", ""));
        assertThat(envelope.affirmation().former().line()).isEqualTo("4 Elm St");
        assertThat(envelope.affirmation().fieldStates())
                .isEqualTo(Map.of(Field.ZIP, FieldState.ILLEGIBLE, Field.ID_LAST4, FieldState.LEFT_BLANK));
        assertThat(envelope.handling().voterSigned()).isEqualTo(Envelope.VoterSignature.MARK);
        assertThat(envelope.handling().condition()).isEqualTo(Envelope.Condition.UNKNOWN);
        assertThat(warnings).isEmpty();
    }

    @Test
    void refuses_bad_envelopes() {
        badEnvelope("field_states", "zip", "\"zip\" is not a pair (write it as field=state)");
        badEnvelope("field_states", "zipp=illegible", "\"zipp\" is not one of last_name");
        badEnvelope("field_states", "zip=lost", "\"lost\" is not one of keyed");
        badEnvelope("field_states", "zip=refused;zip=keyed", "zip appears twice");
        badEnvelope("issue_reasons", "a; b", "is not a list");
        badEnvelope("statements_ticked", "a;;b", "is not a list");
        badEnvelope("voter_signed", "x", "\"x\" is not one of yes, no, mark, unknown");
        badEnvelope("source", "fax", "\"fax\" is not one of poll");
        badEnvelope("receipt_no", "8".repeat(61), "cannot be a receipt number");
        String same = EnvelopeRows.text(Map.of("envelope_no", "E-1"), Map.of("envelope_no", "E-1"));
        bad(EnvelopeReader::read, same, 3, "envelope_no", "lines 2 and 3");
    }

    private void badEnvelope(String column, String value, String reason) {
        bad(EnvelopeReader::read, EnvelopeRows.text(Map.of("envelope_no", "E-1", column, value)), 2, column, reason);
    }

    private <T> List<T> good(BiFunction<Path, Consumer<String>, NumberedRows<T>> reader, String text) {
        return read(reader, text).values();
    }

    private <T> T read(BiFunction<Path, Consumer<String>, T> reader, String text) {
        try {
            return reader.apply(Files.writeString(folder.resolve("t.csv"), text), warnings::add);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private <T> void bad(
            BiFunction<Path, Consumer<String>, T> reader, String text, int line, String column, String reason) {
        refused(() -> read(reader, text), "t.csv", line, column, reason);
    }
}
