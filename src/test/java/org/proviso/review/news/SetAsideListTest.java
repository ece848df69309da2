package org.proviso.review.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.files.InputException;
import org.proviso.files.SetAsideRow;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.review.find.FindService;
import org.proviso.roll.ListReadService;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.StagedList;

/** Newer lists with rows that could not be read: refused, or used without them, by one or by two. */
class SetAsideListTest {

    private static final ElectionId ID = new ElectionId(Primary.ID);

    @TempDir
    private Path folder;

    @OnBothDatabases
    void few_rows_are_left_out_by_one_person_with_a_reason(TestOffice services) throws IOException {
        Primary.loaded(services);
        Path file = roll("T0000009,Nobody,too,short");
        StagedList staged = staged(services, SnapshotKind.ROLL, file);
        assertThat(staged.aside().rowsAside()).isEqualTo(1);
        assertThat(staged.aside().isSettled()).isFalse();
        assertThat(staged.rows()).isEqualTo(5_000);
        assertThat(aside(services, staged))
                .extracting(SetAsideRow::list, SetAsideRow::line, SetAsideRow::column, SetAsideRow::asItCame)
                .containsExactly(tuple("roll.csv", 5_002, "", "T0000009,Nobody,too,short"));
        assertThat(why(load(services, SnapshotKind.ROLL, file)))
                .as("nobody decided")
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(why(use(services, staged, " "))).isEqualTo(Why.NO_REASON);
        assertThat(use(services, staged, "The state mends it by Friday.")).isInstanceOf(NewListResult.InUse.class);
        assertThat(services.the(RollService.class).snapshotInUse(ID, SnapshotKind.ROLL))
                .isEqualTo(staged.snapshotNo());
        assertThat(newestEntry(services))
                .contains("list_in_use", "\"set_aside\":1", staged.aside().rowsHash())
                .doesNotContain("Friday", "Nobody");
        FindService find = services.the(FindService.class);
        assertThat(as("ada", () -> find.unread(ID, "nobody, Too")).lines()).containsExactly(5_002);
        assertThat(as("ada", () -> find.unread(ID, "Nobody Else")).words())
                .isEqualTo("1 row of the roll in use could not be read. None of them contains these words.");
        assertThat(as("carl", () -> services.the(NewerFileService.class).asideInUse(ID)))
                .isEqualTo(1);
        StagedList again = staged(services, SnapshotKind.ROLL, file);
        assertThat(again.known()).as("the same file again").isTrue();
        assertThat(again.snapshotNo()).isEqualTo(again.inUseNo());
        assertThat(load(services, SnapshotKind.ROLL, file)).isInstanceOf(NewListResult.NothingNew.class);
        assertThat(why(use(services, staged, "From a stale page."))).isEqualTo(Why.NOTHING_NEW);
    }

    @OnBothDatabases
    void more_than_the_office_s_share_take_two_people(TestOffice services) throws IOException {
        Primary.loaded(services);
        int before = services.the(RollService.class).snapshotInUse(ID, SnapshotKind.MAIL_BALLOTS);
        StagedList staged = staged(services, SnapshotKind.MAIL_BALLOTS, mail("T0000001,M9,soon,void,"));
        assertThat(use(services, staged, "The vendor is closed.")).isInstanceOf(NewListResult.WaitsForSecond.class);
        assertThat(newestEntry(services)).contains("list_waits_for_second", "\"set_aside\":1");
        assertThat(services.the(RollService.class).snapshotInUse(ID, SnapshotKind.MAIL_BALLOTS))
                .as("the second person is absent")
                .isEqualTo(before);
        assertThat(why(use(services, staged, "Again, from a stale page."))).isEqualTo(Why.NOTHING_NEW);
        assertThat(why(refuse(services, staged))).isEqualTo(Why.NOTHING_NEW);
        NewerFileService files = services.the(NewerFileService.class);
        assertThatThrownBy(() -> as("carl", () -> files.confirm(ID, staged.snapshotNo())))
                .isInstanceOf(NotPermittedException.class);
        assertThat(as("dora", () -> files.confirm(ID, staged.snapshotNo()))).isInstanceOf(NewListResult.InUse.class);
        assertThat(services.the(RollService.class).snapshotInUse(ID, SnapshotKind.MAIL_BALLOTS))
                .isEqualTo(staged.snapshotNo());
    }

    @OnBothDatabases
    void a_file_that_is_refused_leaves_nothing(TestOffice services) throws IOException {
        Primary.loaded(services);
        List<Integer> before = counts(services);
        StagedList staged = staged(services, SnapshotKind.ROLL, roll("T0000009,Nobody,too,short"));
        assertThat(counts(services)).isNotEqualTo(before);
        assertThat(refuse(services, staged)).isInstanceOf(NewListResult.FileRefused.class);
        assertThat(counts(services)).isEqualTo(before);
        assertThat(why(refuse(services, staged))).as("twice").isEqualTo(Why.NOTHING_NEW);
        StagedList other = staged(services, SnapshotKind.ROLL, roll("T0000008,Somebody,too,short"));
        assertThat(other.snapshotNo()).as("the number is free again").isEqualTo(staged.snapshotNo());
        assertThat(why(use(services, staged, "From a page that shows the file that was refused.")))
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(staged(services, SnapshotKind.ROLL, roll("T0000009,Nobody,too,short"))
                        .known())
                .as("the file that was refused is read anew")
                .isFalse();
    }

    @OnBothDatabases
    void a_newer_file_in_which_the_row_is_mended_has_nothing_set_aside(TestOffice services) throws IOException {
        Primary.loaded(services);
        List<String> lines = Files.readAllLines(Primary.FOLDER.resolve("roll.csv"));
        String row = lines.get(100);
        VoterId voter = new VoterId(row.split(",")[0]);
        lines.set(100, row + ",too,many");
        StagedList staged = staged(services, SnapshotKind.ROLL, write("roll.csv", lines));
        assertThat(staged.touchedVoterIds()).containsExactly(voter);
        FindService find = services.the(FindService.class);
        assertThat(as("ada", () -> find.unread(ID, voter.value())).words()).isEmpty();
        use(services, staged, "One row.");
        assertThat(services.the(RollService.class).voter(ID, voter)).isEmpty();
        assertThat(as("ada", () -> find.unread(ID, voter.value())).words())
                .isEqualTo(
                        "1 row of the roll in use could not be read. In line 101 these words stand. This voter may be on"
                                + " the roll: ask a supervisor (Setup, rows set aside).");
        lines.set(100, row);
        lines.add("");
        StagedList mended = staged(services, SnapshotKind.ROLL, write("roll.csv", lines));
        assertThat(mended.aside().isEmpty()).isTrue();
        assertThat(mended.touchedVoterIds()).containsExactly(voter);
        assertThat(load(services, SnapshotKind.ROLL, folder.resolve("roll.csv")))
                .isInstanceOf(NewListResult.InUse.class);
        assertThat(newestEntry(services)).doesNotContain("set_aside");
        assertThat(services.the(RollService.class).voter(ID, voter)).isPresent();
        assertThat(as("ada", () -> find.unread(ID, voter.value())).words()).isEmpty();
    }

    @OnBothDatabases
    void damage_to_the_file_and_a_closed_election_are_refused(TestOffice services) throws IOException {
        Primary.loaded(services);
        List<Integer> before = counts(services);
        assertThatThrownBy(() -> staged(services, SnapshotKind.CHECK_INS, write("check-ins.csv", List.of("voter_id"))))
                .isInstanceOf(InputException.class);
        assertThat(counts(services)).isEqualTo(before);
        StagedList staged = staged(services, SnapshotKind.ROLL, roll("T0000009,Nobody,too,short"));
        services.inTransaction(() -> {
            services.the(ElectionService.class).close(ID);
            return true;
        });
        assertThat(why(use(services, staged, "Too late."))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(why(refuse(services, staged))).isEqualTo(Why.ELECTION_CLOSED);
    }

    private Path roll(String bad) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("roll.csv")));
        lines.add(bad);
        return write("roll.csv", lines);
    }

    private Path mail(String bad) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("mail-ballots.csv")));
        lines.add(bad);
        return write("mail-ballots.csv", lines);
    }

    private Path write(String name, List<String> lines) throws IOException {
        return Files.write(folder.resolve(name), lines);
    }

    private static StagedList staged(TestOffice services, SnapshotKind kind, Path file) {
        return as("carl", () -> services.the(ListReadService.class).stage(ID, kind, file));
    }

    private static List<SetAsideRow> aside(TestOffice services, StagedList staged) {
        return as("carl", () -> {
            ListReadService lists = services.the(ListReadService.class);
            List<SetAsideRow> rows = lists.firstAside(ID, staged.snapshotNo(), 100);
            StringWriter file = new StringWriter();
            lists.writeAside(ID, staged.snapshotNo(), file);
            assertThat(file.toString().lines()).hasSize(1 + rows.size());
            return rows;
        });
    }

    private static NewListResult load(TestOffice services, SnapshotKind kind, Path file) {
        return as("carl", () -> services.the(NewerFileService.class).load(ID, kind, file));
    }

    private static NewListResult use(TestOffice services, StagedList staged, String because) {
        return as(
                "carl",
                () -> services.the(NewerFileService.class)
                        .useWithoutAside(ID, staged.snapshotNo(), staged.aside().rowsHash(), because));
    }

    private static NewListResult refuse(TestOffice services, StagedList staged) {
        return as(
                "carl",
                () -> services.the(NewerFileService.class)
                        .refuseFile(ID, staged.snapshotNo(), staged.aside().rowsHash()));
    }

    private static Why why(NewListResult result) {
        return ((NewListResult.Refused) result).refusal().why();
    }

    private static List<Integer> counts(TestOffice services) {
        return List.of("snapshot", "voter", "set_aside_row", "set_aside_list", "ledger").stream()
                .map(table -> services.jdbc()
                        .sql("select count(*) from " + table)
                        .query(Integer.class)
                        .single())
                .toList();
    }

    private static String newestEntry(TestOffice services) {
        return services.jdbc()
                .sql("select act || ' ' || payload from ledger where chain = ? order by sequence desc limit 1")
                .param(LedgerChain.of(ID).name())
                .query(String.class)
                .single();
    }
}
