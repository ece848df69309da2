package org.proviso.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.InputException;
import org.proviso.files.SetAsideRow;
import org.proviso.journey.Office;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.ListReadService;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;

/** An election folder with bad rows in its outside lists is loaded without them by one supervisor, or by two. */
class LoadWithoutAsideTest {

    private static final Path PRIMARY = Path.of("sample-cases", "tamarack-primary");
    private static final ElectionId ID = new ElectionId("tamarack-primary");

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void copy() throws IOException {
        folder = Files.createDirectory(temporary.resolve(ID.value()));
        try (Stream<Path> files = Files.walk(PRIMARY)) {
            for (Path file : files.skip(1).toList()) {
                Files.copy(file, folder.resolve(PRIMARY.relativize(file).toString()));
            }
        }
    }

    @OnBothDatabases
    void few_rows_are_left_out_by_one_person_and_kept_as_they_came(TestOffice office) throws IOException {
        Office.staffed(office);
        append("roll.csv", "T0000001,Nobody,too,short\n");
        assertThatThrownBy(() -> as("carl", () -> service(office).load(folder))).isInstanceOf(InputException.class);
        LookedAtFolder looked = look(office, "carl");
        assertThat(looked.counts()).containsExactly(Map.entry("roll.csv", 1));
        assertThat(looked.byTwo()).isFalse();
        assertThat(rows(office, "election")).isZero();
        assertThat(refused(load(office, "carl", looked.rowsHash(), " ")).why()).isEqualTo(Why.NO_REASON);
        assertThat(refused(load(office, "carl", "another", "Mended soon.")).why())
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(accepted(load(office, "carl", looked.rowsHash(), "Mended soon.")))
                .isEqualTo(new LoadResult(ID, false));
        int roll = office.the(RollService.class).snapshotInUse(ID, SnapshotKind.ROLL);
        assertThat(office.the(RollService.class).roll(ID)).hasSize(5_000);
        assertThat(as("carl", () -> office.the(ListReadService.class).firstAside(ID, roll, 10)))
                .extracting(SetAsideRow::list, SetAsideRow::line, SetAsideRow::asItCame)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("roll.csv", 5_002, "T0000001,Nobody,too,short"));
        assertThat(as("carl", () -> office.the(ListReadService.class).staged(ID, roll))
                        .aside()
                        .because())
                .isEqualTo("Mended soon.");
        LedgerEntry entry =
                office.the(LedgerService.class).read(LedgerChain.of(ID), 0, 10).get(0);
        assertThat(entry.act()).isEqualTo("election_loaded");
        assertThat(entry.payload())
                .containsEntry("set_aside", Map.of("roll.csv", 1L))
                .containsEntry("set_aside_hash", looked.rowsHash());
        assertThat(entry.line()).doesNotContain("Mended", "Nobody");
        assertThat(accepted(load(office, "carl", looked.rowsHash(), "Again.")))
                .as("the same files again")
                .isEqualTo(new LoadResult(ID, true));
        assertThat(rows(office, "set_aside_row")).isOne();
    }

    @OnBothDatabases
    void many_rows_take_two_people_who_load_the_same_files(TestOffice office) throws IOException {
        Office.staffed(office);
        append("streets.csv", "800,999,both,E Nowhere St,Millbrook,49871,999,\n");
        append("mail-ballots.csv", "T0000001,M990001,2026-07-01,void,soon\n");
        LookedAtFolder looked = look(office, "carl");
        assertThat(looked.byTwo()).isTrue();
        assertThat(looked.agreedBecause()).isEmpty();
        assertThat(accepted(load(office, "carl", looked.rowsHash(), "The vendor is closed.")))
                .isEqualTo(new LoadResult(ID, false, true));
        assertThat(rows(office, "election")).as("the second person is absent").isZero();
        assertThat(refused(load(office, "carl", looked.rowsHash(), "Again.")).why())
                .isEqualTo(Why.OWN_ACT);
        assertThat(look(office, "carl").agreedBecause()).isEmpty();
        append("check-ins.csv", ",\n");
        LookedAtFolder changed = look(office, "dora");
        assertThat(changed.agreedBecause()).as("other files are another word").isEmpty();
        assertThat(refused(load(office, "dora", looked.rowsHash(), "From a stale page."))
                        .why())
                .isEqualTo(Why.NOTHING_NEW);
        Files.copy(
                PRIMARY.resolve("check-ins.csv"),
                folder.resolve("check-ins.csv"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(look(office, "dora").agreedBecause()).isEqualTo(Optional.of("The vendor is closed."));
        assertThat(accepted(load(office, "dora", looked.rowsHash(), "Agreed."))).isEqualTo(new LoadResult(ID, false));
        assertThat(rows(office, "set_aside_row")).isEqualTo(2);
        assertThat(as("carl", () -> office.the(ListReadService.class).firstAside(ID, 0, 10)))
                .extracting(SetAsideRow::list)
                .containsExactly("streets.csv");
        assertThat(as("carl", () -> office.the(NewerFileService.class).asideInUse(ID)))
                .isEqualTo(2);
    }

    @OnBothDatabases
    void a_bad_row_of_the_office_s_own_files_refuses_the_whole(TestOffice office) throws IOException {
        Office.staffed(office);
        append("roll.csv", "T0000001,Nobody,too,short\n");
        append("envelopes.csv", "X-1\n");
        assertThatThrownBy(() -> look(office, "carl")).isInstanceOf(InputException.class);
        assertThatThrownBy(() -> load(office, "carl", "", "Whatever.")).isInstanceOf(InputException.class);
        assertThat(rows(office, "election")).isZero();
    }

    private void append(String name, String row) throws IOException {
        Files.writeString(folder.resolve(name), row, StandardOpenOption.APPEND);
    }

    private static ElectionLoadService service(TestOffice office) {
        return office.the(ElectionLoadService.class);
    }

    private LookedAtFolder look(TestOffice office, String who) {
        return as(who, () -> service(office).look(folder));
    }

    private ActResult<LoadResult> load(TestOffice office, String who, String seenHash, String because) {
        return as(who, () -> service(office).loadWithoutAside(folder, seenHash, because));
    }

    private static int rows(TestOffice office, String table) {
        return office.jdbc()
                .sql("select count(*) from " + table)
                .query(Integer.class)
                .single();
    }
}
