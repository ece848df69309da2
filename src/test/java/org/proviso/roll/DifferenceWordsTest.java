package org.proviso.roll;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.LoadedOffice;

/** Why a case changed, as its page gives it. */
class DifferenceWordsTest {

    private static final String ID = LoadedOffice.ID;

    @TempDir
    private Path folder;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private List<String> words(TestOffice office, SnapshotKind kind, ListFile newer, VoterId voterId) {
        SnapshotService lists = office.the(SnapshotService.class);
        StagedList staged = lists.stage(new ElectionId(ID), kind, newer.write(folder, "newer.csv"));
        return lists.differences(new ElectionId(ID), kind, voterId, staged.inUseNo(), staged.snapshotNo());
    }

    @OnADatabase
    void a_record_of_the_roll_differs_field_by_field(TestOffice office) {
        LoadedOffice.primary(office);
        ListFile roll = ListFile.of("roll.csv")
                .set(1, "status", "cancelled")
                .set(1, "status_reason", "moved away")
                .set(1, "status_on", "2026-08-05")
                .set(1, "last_name", "Jimenez-Kell")
                .set(1, "registration_channel", "")
                .set(1, "unit", "Apt 3")
                .set(1, "number_matched", "");
        assertThat(words(office, SnapshotKind.ROLL, roll, new VoterId("T1000610")))
                .containsExactly(
                        "status active -> cancelled",
                        "status reason not stated -> moved away",
                        "status date not stated -> 08/05/2026",
                        "registration channel in person -> not stated",
                        "name Jimenez, Hannah Erin -> Jimenez-Kell, Hannah Erin",
                        "address 2204 Sixth Ln, Millbrook 49873 -> 2204 Sixth Ln Apt 3, Millbrook 49873",
                        "ID number verified yes -> not stated");
    }

    @OnADatabase
    void every_field_of_the_roll_that_can_touch_a_voter_has_words(TestOffice office) {
        LoadedOffice.primary(office);
        List<String> columns = List.of(
                "last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,precinct,split,registration_date,registration_channel,received_on,status,status_reason,status_on,confirmation_sent_on,last_voted_on,id_last4,drivers_license,party,party_since,id_required,number_matched,entitlement,former_name,confidential,mail_address,language"
                        .split(","));
        ListFile roll = ListFile.of("roll.csv");
        for (int line = 1; line <= columns.size(); line++) {
            roll.set(line, columns.get(line - 1), other(columns.get(line - 1)));
        }
        SnapshotService lists = office.the(SnapshotService.class);
        StagedList staged = lists.stage(new ElectionId(ID), SnapshotKind.ROLL, roll.write(folder, "newer.csv"));
        assertThat(staged.touchedVoterIds()).hasSize(columns.size());
        for (VoterId voter : staged.touchedVoterIds()) {
            assertThat(lists.differences(
                            new ElectionId(ID), SnapshotKind.ROLL, voter, staged.inUseNo(), staged.snapshotNo()))
                    .as(voter.value())
                    .isNotEmpty();
        }
    }

    /** A value that no voter of the sample has in that column. */
    private static String other(String column) {
        return switch (column) {
            case "registration_channel" -> "agency";
            case "status" -> "pending";
            case "id_required", "confidential" -> "yes";
            case "number_matched" -> "no";
            case "entitlement" -> "federal_only";
            default ->
                column.endsWith("_on") || column.contains("date") || column.endsWith("since") ? "2001-01-01" : "ZZ9";
        };
    }

    @OnADatabase
    void a_protected_address_is_said_to_differ_and_not_shown(TestOffice office) {
        LoadedOffice.primary(office);
        ListFile roll = ListFile.of("roll.csv").set(1, "confidential", "yes").set(1, "street", "Hidden Ln");
        assertThat(words(office, SnapshotKind.ROLL, roll, new VoterId("T1000610")))
                .containsExactly("protected address changed", "address protected no -> yes");
    }

    @OnADatabase
    void a_voter_who_came_or_went_is_said_so(TestOffice office) {
        LoadedOffice.primary(office);
        ListFile roll = ListFile.of("roll.csv").set(1, "voter_id", "T0000001");
        assertThat(words(office, SnapshotKind.ROLL, roll, new VoterId("T0000001")))
                .containsExactly("added to the roll, status active");
        assertThat(words(office, SnapshotKind.ROLL, roll, new VoterId("T1000610")))
                .containsExactly("no longer on the roll, status was active");
        assertThat(words(office, SnapshotKind.ROLL, roll, new VoterId("T1001190")))
                .isEmpty();
    }

    @OnADatabase
    void a_mail_ballot_differs_by_its_serial(TestOffice office) {
        LoadedOffice.primary(office);
        ListFile ballots = ListFile.of("mail-ballots.csv")
                .set(1, "state", "accepted")
                .set(1, "state_on", "2026-08-05")
                .add("T7430202,M900001,2026-07-01,cure_pending,");
        assertThat(words(office, SnapshotKind.MAIL_BALLOTS, ballots, new VoterId("T7430202")))
                .contains(
                        "mail ballot M200001: void -> accepted",
                        "mail ballot M200001 date: 06/19/2026 -> 08/05/2026",
                        "mail ballot M900001 added: cure pending");
        assertThat(words(office, SnapshotKind.MAIL_BALLOTS, ballots.remove(2), new VoterId("T5725075")))
                .contains("mail ballot M200002 no longer listed, was void");
    }

    @OnADatabase
    void a_check_in_differs_by_what_became_of_it(TestOffice office) {
        LoadedOffice.primary(office);
        ListFile books = ListFile.of("check-ins.csv")
                .set(1, "ballot_issued", "no")
                .set(1, "cancelled_at", "2026-08-04T07:05")
                .add("T3117065,Library,2026-08-04T18:30,provisional,yes,");
        assertThat(words(office, SnapshotKind.CHECK_INS, books, new VoterId("T3117065")))
                .containsExactly(
                        "check-in Fairgrounds Pavilion, 08/04/2026 7:00 am: ballot issued yes -> no",
                        "check-in Fairgrounds Pavilion, 08/04/2026 7:00 am: cancelled not stated -> 08/04/2026 7:05 am",
                        "check-in added: Library, 08/04/2026 6:30 pm, provisional");
        assertThat(words(office, SnapshotKind.CHECK_INS, books.remove(1), new VoterId("T3117065")))
                .contains("check-in removed: Fairgrounds Pavilion, 08/04/2026 7:00 am");
    }
}
