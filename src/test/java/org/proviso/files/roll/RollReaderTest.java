package org.proviso.files.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Entitlement;
import org.proviso.core.PersonName;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;

public class RollReaderTest {

    public static final String HEADER =
            "voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,"
                    + "precinct,registration_date,status,id_last4,drivers_license,party,id_required";
    public static final String ADA =
            "V1,Dunmore,Ada,May,,1984-03-12,88,Sorrel Ln,Apt 3,Millbrook,49871,12,2019-05-02,active,0042,D7,B,no";

    @TempDir
    Path folder;

    @Test
    void reads_a_voter_with_the_columns_every_roll_has() throws IOException {
        assertThat(read(HEADER, ADA))
                .containsExactly(new Voter(
                        new VoterId("V1"),
                        new PersonName("Dunmore", "Ada", "May", ""),
                        LocalDate.of(1984, 3, 12),
                        new Voter.Residence("88", "Sorrel Ln", "Apt 3", "Millbrook", "49871", "12", ""),
                        new Voter.Registration(
                                LocalDate.of(2019, 5, 2),
                                null,
                                null,
                                RollStatus.ACTIVE,
                                "",
                                null,
                                null,
                                Entitlement.FULL),
                        "0042",
                        "D7",
                        "B",
                        null,
                        YesNo.NO,
                        YesNo.UNKNOWN,
                        null,
                        "",
                        false,
                        "",
                        ""));
    }

    @Test
    void reads_the_columns_a_roll_may_have() throws IOException {
        String header = HEADER + ",split,registration_channel,received_on,status_reason,status_on,confirmation_sent_on,"
                + "last_voted_on,party_since,number_matched,entitlement,former_name,confidential,mail_address,language";
        Voter voter = read(
                        header,
                        ADA + ",A,motor_vehicle,2019-05-06,moved,2024-01-02,2023-12-01,2022-11-08,2020-01-01,yes,"
                                + "federal_only,Ada Kell,yes,PO Box 9,es")
                .get(0);

        assertThat(voter.residence().split()).isEqualTo("A");
        assertThat(voter.registration())
                .isEqualTo(new Voter.Registration(
                        LocalDate.of(2019, 5, 2),
                        RegistrationChannel.MOTOR_VEHICLE,
                        LocalDate.of(2019, 5, 6),
                        RollStatus.ACTIVE,
                        "moved",
                        LocalDate.of(2024, 1, 2),
                        LocalDate.of(2023, 12, 1),
                        Entitlement.FEDERAL_ONLY));
        assertThat(voter.lastVotedOn()).isEqualTo(LocalDate.of(2022, 11, 8));
        assertThat(voter.partySince()).isEqualTo(LocalDate.of(2020, 1, 1));
        assertThat(voter.numberMatched()).isEqualTo(YesNo.YES);
        assertThat(voter.formerName()).isEqualTo("Ada Kell");
        assertThat(voter.confidential()).isTrue();
        assertThat(voter.mailAddress()).isEqualTo("PO Box 9");
        assertThat(voter.language()).isEqualTo("es");
    }

    @Test
    void refuses_a_voter_without_id_or_status_and_bad_values() {
        fails(ADA.replace("V1,", ","), "voter_id", "is empty");
        fails(ADA.replace("V1,", "V1 ,"), "voter_id", "has a space before or after it");
        fails(ADA.replace(",active,", ",,"), "status", "is empty");
        fails(
                ADA.replace(",active,", ",Active,"),
                "status",
                "\"Active\" is not one of active, inactive, pending, cancelled");
        fails(ADA.replace("1984-03-12", "1984-02-30"), "date_of_birth", "\"1984-02-30\" is not a date");
        fails(ADA.replace(",no", ",0"), "id_required", "\"0\" is not yes or no");
    }

    @Test
    void refuses_a_doubled_voter_id() {
        refused(() -> read(HEADER, ADA, ADA.replace("V1", "V2"), ADA), "roll.csv", 4, "voter_id", "in lines 2 and 4");
    }

    private void fails(String row, String column, String reason) {
        List<Voter> loaded = new ArrayList<>();
        refused(() -> loaded.addAll(read(HEADER, ADA.replace("V1", "V0"), row)), "roll.csv", 3, column, reason);
        assertThat(loaded).isEmpty();
    }

    private List<Voter> read(String... lines) throws IOException {
        Path file = Files.writeString(folder.resolve("roll.csv"), String.join("\n", lines) + "\n");
        return RollReader.read(file, warning -> {
            throw new AssertionError(warning);
        });
    }
}
