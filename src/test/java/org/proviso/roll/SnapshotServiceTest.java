package org.proviso.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.MailBallot;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.InputException;
import org.proviso.intake.LoadedOffice;
import org.springframework.transaction.IllegalTransactionStateException;

/** Newer lists for the samples' primary, staged beside those it was loaded with. */
class SnapshotServiceTest {

    private static final String ID = LoadedOffice.ID;

    @TempDir
    private Path folder;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static SnapshotService asSupervisor(TestOffice office) {
        LoadedOffice.primary(office);
        return office.the(SnapshotService.class);
    }

    @OnBothDatabases
    void a_newer_roll_is_kept_beside_the_one_in_use_with_the_voters_it_touches(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        ListFile roll = ListFile.of("roll.csv");
        String cancelled = roll.key(7);
        String gone = roll.key(9);
        roll.set(7, "status", "cancelled").repeat(8).set(5001, "voter_id", "T0000001");
        StagedList staged = lists.stage(
                new ElectionId(ID), SnapshotKind.ROLL, roll.remove(9).write(folder, "roll-2.csv"));
        assertThat(staged.touchedVoterIds())
                .containsExactlyInAnyOrder(new VoterId("T0000001"), new VoterId(cancelled), new VoterId(gone));
        assertThat(staged.rows()).isEqualTo(5_000);
        assertThat(staged.known()).isFalse();
        assertThat(staged.snapshotNo()).isNotEqualTo(staged.inUseNo());
        RollService used = office.the(RollService.class);
        assertThat(used.voter(new ElectionId(ID), new VoterId(gone))).isPresent();
        assertThat(status(used, new VoterId(cancelled))).isEqualTo(RollStatus.ACTIVE);
    }

    @OnBothDatabases
    void a_staged_roll_is_put_in_use_within_the_transaction_of_who_reassessed(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        ListFile roll = ListFile.of("roll.csv").set(7, "status", "cancelled");
        StagedList staged = lists.stage(new ElectionId(ID), SnapshotKind.ROLL, roll.write(folder, "roll-2.csv"));
        assertThatThrownBy(() -> lists.use(new ElectionId(ID), SnapshotKind.ROLL, staged.snapshotNo()))
                .isInstanceOf(IllegalTransactionStateException.class);
        office.inTransaction(() -> {
            lists.use(new ElectionId(ID), SnapshotKind.ROLL, staged.snapshotNo());
            return staged;
        });
        assertThat(office.the(RollService.class).snapshotInUse(new ElectionId(ID), SnapshotKind.ROLL))
                .isEqualTo(staged.snapshotNo());
        assertThat(status(office.the(RollService.class), new VoterId(roll.key(7))))
                .isEqualTo(RollStatus.CANCELLED);
        assertThat(lists.staged(new ElectionId(ID), staged.snapshotNo()).changesNothing())
                .isTrue();
        assertThat(lists.staged(new ElectionId(ID), staged.inUseNo()).touchedVoterIds())
                .containsExactly(new VoterId(roll.key(7)));
    }

    private static RollStatus status(RollService roll, VoterId voterId) {
        return roll.voter(new ElectionId(ID), voterId)
                .map(Voter::registration)
                .map(Voter.Registration::status)
                .orElseThrow();
    }

    @OnBothDatabases
    void the_same_rows_in_another_order_touch_nobody(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        for (SnapshotKind kind : List.of(SnapshotKind.ROLL, SnapshotKind.MAIL_BALLOTS, SnapshotKind.CHECK_INS)) {
            String name = kind.code().replace('_', '-') + ".csv";
            StagedList staged = lists.stage(
                    new ElectionId(ID), kind, ListFile.of(name).backwards().write(folder, name));
            assertThat(staged.known()).isFalse();
            assertThat(staged.changesNothing()).as(name).isTrue();
        }
    }

    @OnBothDatabases
    void a_file_that_is_in_the_office_already_is_recognised_and_nothing_is_written(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        Path same = ListFile.of("mail-ballots.csv").write(folder, "again.csv");
        StagedList inUse = lists.stage(new ElectionId(ID), SnapshotKind.MAIL_BALLOTS, same);
        assertThat(inUse.known()).isTrue();
        assertThat(inUse.snapshotNo()).isEqualTo(inUse.inUseNo());
        assertThat(inUse.changesNothing()).isTrue();
        Path newer = ListFile.of("mail-ballots.csv").set(1, "state", "accepted").write(folder, "newer.csv");
        StagedList first = lists.stage(new ElectionId(ID), SnapshotKind.MAIL_BALLOTS, newer);
        StagedList again = lists.stage(new ElectionId(ID), SnapshotKind.MAIL_BALLOTS, newer);
        assertThat(again.known()).isTrue();
        assertThat(again.snapshotNo()).isEqualTo(first.snapshotNo());
        assertThat(again.touchedVoterIds()).isEqualTo(first.touchedVoterIds()).hasSize(1);
        assertThat(rows(office, "snapshot")).isEqualTo(5);
        assertThat(rows(office, "mail_ballot")).isEqualTo(1_200);
    }

    @OnBothDatabases
    void mail_ballots_that_came_changed_and_went_touch_their_voters(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        ListFile ballots = ListFile.of("mail-ballots.csv");
        String changed = ballots.key(3);
        String gone = ballots.key(600);
        ballots.set(3, "state", "late").remove(600).add("T0000001,M900001,2026-07-01,outstanding,");
        StagedList staged =
                lists.stage(new ElectionId(ID), SnapshotKind.MAIL_BALLOTS, ballots.write(folder, "mail.csv"));
        assertThat(staged.touchedVoterIds())
                .containsExactlyInAnyOrder(new VoterId("T0000001"), new VoterId(changed), new VoterId(gone));
        assertThat(office.the(RollService.class).mailBallots(new ElectionId(ID), new VoterId(changed)))
                .extracting(MailBallot::state)
                .doesNotContain(MailBallot.State.LATE);
    }

    @OnBothDatabases
    void a_check_in_that_is_there_twice_now_touches_its_voter(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        ListFile books = ListFile.of("check-ins.csv").repeat(4);
        StagedList staged = lists.stage(new ElectionId(ID), SnapshotKind.CHECK_INS, books.write(folder, "books.csv"));
        assertThat(staged.touchedVoterIds()).containsExactly(new VoterId(books.key(4)));
        assertThat(lists.differences(
                        new ElectionId(ID),
                        SnapshotKind.CHECK_INS,
                        new VoterId(books.key(4)),
                        staged.inUseNo(),
                        staged.snapshotNo()))
                .singleElement()
                .asString()
                .startsWith("check-in added: ");
    }

    @OnBothDatabases
    void the_states_list_gives_the_lines_that_changed(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        String header = "last_name,first_name,middle_name,suffix,date_of_birth,id_last4,drivers_license,county,how,on";
        String kell = "Kell,Ada,,,1984-03-12,1234,,Alder County,in_person,2026-08-04";
        String moss = "Moss,Ben,,,,,,Birch County,,";
        StagedList first = lists.stage(new ElectionId(ID), SnapshotKind.VOTED_ELSEWHERE, states(header, kell));
        assertThat(first.touchedVoterIds()).isEmpty();
        assertThat(first.changedLines())
                .extracting(StateListChange::words)
                .containsExactly("entry added to the state's list: voted in Alder County (in person) on 08/04/2026");
        office.inTransaction(() -> {
            lists.use(new ElectionId(ID), SnapshotKind.VOTED_ELSEWHERE, first.snapshotNo());
            return first;
        });
        StagedList second = lists.stage(new ElectionId(ID), SnapshotKind.VOTED_ELSEWHERE, states(header, moss));
        assertThat(second.changedLines()).extracting(StateListChange::added).containsExactly(false, true);
        assertThat(second.changedLines().get(0).line().birthDate()).isEqualTo("1984-03-12");
        assertThat(second.changedLines().get(1).line().name().last()).isEqualTo("Moss");
    }

    private Path states(String header, String line) {
        return ListFile.under(header).add(line).write(folder, "states.csv");
    }

    @OnBothDatabases
    void a_row_that_is_wrong_is_named_and_nothing_of_the_file_is_kept(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        Path roll = ListFile.of("roll.csv").set(4_500, "status", "asleep").write(folder, "roll-2.csv");
        assertThatThrownBy(() -> lists.stage(new ElectionId(ID), SnapshotKind.ROLL, roll))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("roll-2.csv line 4501, column status:");
        assertThatThrownBy(() -> lists.stage(new ElectionId(ID), SnapshotKind.ROLL, folder.resolve("none.csv")))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("none.csv: is missing");
        assertThat(rows(office, "voter")).isEqualTo(5_000);
        assertThat(rows(office, "snapshot")).isEqualTo(4);
    }

    @OnBothDatabases
    void a_list_of_another_kind_or_number_is_not_put_in_use(TestOffice office) {
        SnapshotService lists = asSupervisor(office);
        int roll = office.the(RollService.class).snapshotInUse(new ElectionId(ID), SnapshotKind.ROLL);
        assertThatThrownBy(() -> office.inTransaction(() -> {
                    lists.use(new ElectionId(ID), SnapshotKind.CHECK_INS, roll);
                    return roll;
                }))
                .hasMessageContaining("a different kind");
        assertThatThrownBy(() -> lists.staged(new ElectionId(ID), 99)).hasMessageContaining("no list 99");
    }

    @OnBothDatabases
    void only_a_supervisor_stages_a_list_or_sees_which_there_are(TestOffice office) {
        SnapshotService snapshots = asSupervisor(office);
        ListReadService lists = office.the(ListReadService.class);
        Path roll = ListFile.of("roll.csv").write(folder, "roll.csv");
        StagedList staged = lists.stage(new ElectionId(ID), SnapshotKind.ROLL, roll);
        assertThat(lists.staged(new ElectionId(ID), staged.snapshotNo()))
                .isEqualTo(snapshots.staged(new ElectionId(ID), staged.snapshotNo()));
        assertThat(lists.held(new ElectionId(ID))).isEqualTo(snapshots.held(new ElectionId(ID)));
        Staff.hire(office, "ada", Role.REVIEWER, Role.INTAKE);
        Staff.signIn("ada");
        assertThatThrownBy(() -> lists.stage(new ElectionId(ID), SnapshotKind.ROLL, roll))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> lists.staged(new ElectionId(ID), 99)).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> lists.held(new ElectionId(ID))).isInstanceOf(NotPermittedException.class);
    }

    private static int rows(TestOffice office, String table) {
        return office.jdbc()
                .sql("select count(*) from " + table)
                .query(Integer.class)
                .single();
    }
}
