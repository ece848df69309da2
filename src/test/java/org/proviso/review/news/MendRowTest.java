package org.proviso.review.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.journey.Primary;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.ListReadService;
import org.proviso.roll.LookupService;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.StagedList;
import org.proviso.roll.aside.MendRow;
import org.proviso.roll.aside.MendableRow;

/** A row that was set aside is mended by hand: a newer list has it, and what rests on the older one stays true. */
class MendRowTest {

    private static final ElectionId ID = new ElectionId(Primary.ID);

    @TempDir
    private Path folder;

    @OnBothDatabases
    void the_voter_of_a_mended_row_is_found_again_and_the_case_assessed(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        VoterId voter = new VoterId(primary.truth(key).voterId());
        StagedList bad = withoutRowOf(services, voter);
        assertThat(services.the(RollService.class).voter(ID, voter)).isEmpty();
        assertThat(linked(services, key)).isNotEqualTo(voter);
        MendableRow row = toMend(services, bad);
        assertThat(row.cells()).hasSize(row.columns().size() + 1).contains(voter.value());
        List<String> cells = row.cells().subList(0, row.columns().size());
        assertThat(why(mend(services, bad, row, cells, " "))).isEqualTo(Why.NO_REASON);
        List<String> wrong = new ArrayList<>(cells);
        wrong.set(row.columns().indexOf("date_of_birth"), "soon");
        NewListResult.Refused refused = (NewListResult.Refused) mend(services, bad, row, wrong, "Card on file.");
        assertThat(refused.refusal().field()).isEqualTo("date_of_birth");
        assertThat(services.the(RollService.class).snapshotInUse(ID, SnapshotKind.ROLL))
                .isEqualTo(bad.snapshotNo());
        NewListResult.InUse inUse = (NewListResult.InUse) mend(services, bad, row, cells, "Card on file.");
        assertThat(inUse.changed()).extracting(changed -> changed.key()).contains(key);
        assertThat(services.the(RollService.class).voter(ID, voter)).isPresent();
        assertThat(services.the(RollService.class).roll(ID)).hasSize(5_000);
        assertThat(linked(services, key)).isEqualTo(voter);
        assertThat(as("ada", () -> services.the(LookupService.class).numbered(ID, voter.value(), 5)))
                .hasSize(1);
        assertThat(as("carl", () -> services.the(NewerFileService.class).asideInUse(ID)))
                .isZero();
        assertThat(services.jdbc()
                        .sql("select mended_by || ' ' || because from set_aside_mended")
                        .query(String.class)
                        .single())
                .isEqualTo("carl Card on file.");
        assertThat(why(mend(services, bad, row, cells, "Twice, from a stale page.")))
                .isEqualTo(Why.NOTHING_NEW);
        StagedList again = staged(services);
        assertThat(again.known()).as("the same file again").isTrue();
        assertThat(again.mendedInUse()).isEqualTo(1);
        assertThat(again.touchedVoterIds()).containsExactly(voter);
    }

    @OnBothDatabases
    void a_row_of_a_voter_who_is_on_the_roll_and_one_of_a_closed_election_are_refused(TestOffice services)
            throws IOException {
        Primary primary = Primary.loaded(services);
        VoterId voter = new VoterId(primary.truth(primary.envelope("in_order")).voterId());
        StagedList bad = withoutRowOf(services, voter);
        MendableRow row = toMend(services, bad);
        List<String> cells =
                new ArrayList<>(row.cells().subList(0, row.columns().size()));
        List<String> mine = List.copyOf(cells);
        String other = Files.readAllLines(folder.resolve("roll.csv")).get(1).split(",")[0];
        cells.set(row.columns().indexOf("voter_id"), other.equals(voter.value()) ? "T0000001" : other);
        int lists = lists(services);
        assertThat(why(mend(services, bad, row, cells, "Wrong voter."))).isEqualTo(Why.NUMBER_TAKEN);
        assertThat(lists(services)).isEqualTo(lists);
        services.inTransaction(() -> {
            services.the(ElectionService.class).close(ID);
            return true;
        });
        assertThat(why(mend(services, bad, row, mine, "Too late."))).isEqualTo(Why.ELECTION_CLOSED);
    }

    private StagedList withoutRowOf(TestOffice services, VoterId voter) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("roll.csv")));
        lines.replaceAll(line -> line.startsWith(voter + ",") ? line + ",too many" : line);
        Files.write(folder.resolve("roll.csv"), lines);
        StagedList staged = staged(services);
        assertThat(staged.aside().rowsAside()).isEqualTo(1);
        as(
                "carl",
                () -> services.the(NewerFileService.class)
                        .useWithoutAside(ID, staged.snapshotNo(), staged.aside().rowsHash(), "One row."));
        return staged;
    }

    private StagedList staged(TestOffice services) {
        return as(
                "carl",
                () -> services.the(ListReadService.class).stage(ID, SnapshotKind.ROLL, folder.resolve("roll.csv")));
    }

    private static MendableRow toMend(TestOffice services, StagedList list) {
        return as("carl", () -> services.the(ListReadService.class).toMend(ID, list.snapshotNo(), 1))
                .orElseThrow();
    }

    private static NewListResult mend(
            TestOffice services, StagedList list, MendableRow row, List<String> cells, String because) {
        MendRow mend = new MendRow(ID, list.snapshotNo(), 1, row.rowsHash(), row.columns(), cells, because);
        return as("carl", () -> services.the(NewerFileService.class).mend(mend));
    }

    private static VoterId linked(TestOffice services, EnvelopeKey key) {
        return services.the(LinkStore.class).newest(key).orElseThrow().voterId();
    }

    private static int lists(TestOffice services) {
        return services.jdbc()
                .sql("select count(*) from snapshot")
                .query(Integer.class)
                .single();
    }

    private static Why why(NewListResult result) {
        return ((NewListResult.Refused) result).refusal().why();
    }
}
