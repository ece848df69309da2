package org.proviso.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.InputException;
import org.proviso.files.election.ElectionFolder;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.roll.RollService;

/** An election folder is in the tables as it is in the files: whole, once, and with its entry in the ledger. */
class ElectionLoadingTest {

    private static final Path PRIMARY = Path.of("sample-cases", "tamarack-primary");
    private static final String ID = "tamarack-primary";

    private static ElectionFolder files;

    @TempDir
    private Path temporary;

    @BeforeAll
    static void readTheFiles() {
        files = ElectionFolder.read(PRIMARY);
    }

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static ElectionLoadService asSupervisor(TestOffice office) {
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        return office.the(ElectionLoadService.class);
    }

    @OnBothDatabases
    void what_is_in_the_tables_is_what_is_in_the_files(TestOffice office) {
        ElectionLoadService elections = asSupervisor(office);
        assertThat(accepted(elections.load(PRIMARY))).isEqualTo(new LoadResult(new ElectionId(ID), false));
        assertThat(office.the(ElectionService.class).all()).containsExactly(new ElectionId(ID));
        assertThat(office.the(ElectionService.class).find(new ElectionId(ID))).contains(files.election());
        BallotStore ballots = office.the(BallotStore.class);
        assertThat(ballots.contests(ID)).isEqualTo(files.contests());
        assertThat(ballots.styles(ID)).isEqualTo(files.styles());
        assertThat(ballots.precincts(ID)).isEqualTo(files.precincts());
        assertThat(ballots.streets(ID)).isEqualTo(files.streets());
        RollService roll = office.the(RollService.class);
        assertThat(roll.roll(new ElectionId(ID)))
                .isEqualTo(List.copyOf(files.voters().values()));
        assertThat(roll.votedElsewhere(new ElectionId(ID))).isEqualTo(files.votedElsewhere());
        IntakeService intake = office.the(IntakeService.class);
        assertThat(intake.transmittals(new ElectionId(ID))).isEqualTo(files.transmittals());
        assertThat(intake.envelopes(new ElectionId(ID)))
                .isEqualTo(files.envelopes())
                .hasSize(60);
    }

    @OnBothDatabases
    void one_voter_and_one_envelope_are_found_with_what_belongs_to_them(TestOffice office) {
        accepted(asSupervisor(office).load(PRIMARY));
        RollService roll = office.the(RollService.class);
        VoterId mailVoter = files.mailBallots().keySet().iterator().next();
        VoterId walkIn = files.checkIns().keySet().iterator().next();
        assertThat(roll.voter(new ElectionId(ID), mailVoter))
                .contains(files.voters().get(mailVoter));
        assertThat(roll.mailBallots(new ElectionId(ID), mailVoter))
                .isEqualTo(files.mailBallots().get(mailVoter));
        assertThat(roll.checkIns(new ElectionId(ID), walkIn))
                .isEqualTo(files.checkIns().get(walkIn));
        assertThat(roll.voter(new ElectionId(ID), new VoterId("nobody"))).isEmpty();
        IntakeService intake = office.the(IntakeService.class);
        EnvelopeNumber number = files.envelopes().get(7).envelopeNo();
        assertThat(intake.envelope(new ElectionId(ID), number))
                .contains(files.envelopes().get(7));
        assertThat(intake.envelope(new ElectionId(ID), new EnvelopeNumber("none")))
                .isEmpty();
        assertThat(intake.salt(new ElectionId(ID), number).orElseThrow().value())
                .matches("[0-9a-f]{32}");
        assertThat(intake.salt(new ElectionId(ID), number))
                .isNotEqualTo(
                        intake.salt(new ElectionId(ID), files.envelopes().get(8).envelopeNo()));
    }

    @OnBothDatabases
    void the_ledger_has_one_entry_with_counts_and_nobody_in_it(TestOffice office) {
        accepted(asSupervisor(office).load(PRIMARY));
        List<LedgerEntry> entries = office.the(LedgerService.class).read(LedgerChain.of(new ElectionId(ID)), 0, 10);
        assertThat(entries).singleElement().satisfies(entry -> {
            assertThat(entry.act()).isEqualTo("election_loaded");
            assertThat(entry.payload()).containsAllEntriesOf(Map.of("voters", 5_000L, "envelopes", 60L));
        });
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(ID)))
                        .isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void the_same_files_again_are_recognised_and_not_doubled(TestOffice office) throws IOException {
        ElectionLoadService elections = asSupervisor(office);
        accepted(elections.load(PRIMARY));
        assertThat(accepted(elections.load(PRIMARY))).isEqualTo(new LoadResult(new ElectionId(ID), true));
        assertThat(accepted(elections.load(copy("another-name")))).isEqualTo(new LoadResult(new ElectionId(ID), true));
        assertThat(rows(office, "voter")).isEqualTo(5_000);
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(ID)))
                        .entries())
                .isOne();
    }

    @OnBothDatabases
    void the_same_election_from_other_files_is_refused(TestOffice office) throws IOException {
        ElectionLoadService elections = asSupervisor(office);
        accepted(elections.load(PRIMARY));
        Path changed = copy(ID);
        Files.writeString(changed.resolve("election.yaml"), "\n# changed\n", java.nio.file.StandardOpenOption.APPEND);
        assertThat(refused(elections.load(changed)))
                .returns(Why.NUMBER_TAKEN, Refusal::why)
                .extracting(Refusal::words)
                .asString()
                .contains("in the office already");
        assertThat(rows(office, "election")).isOne();
    }

    @OnBothDatabases
    void a_folder_that_is_not_right_leaves_nothing(TestOffice office) throws IOException {
        ElectionLoadService elections = asSupervisor(office);
        Path broken = copy("broken");
        Files.writeString(broken.resolve("roll.csv"), "nonsense\n");
        assertThatThrownBy(() -> elections.load(broken)).isInstanceOf(InputException.class);
        assertThat(office.the(ElectionService.class).all()).isEmpty();
    }

    @OnBothDatabases
    void an_envelope_whose_receipt_number_is_not_in_the_files_has_none_in_the_tables(TestOffice office)
            throws IOException {
        Path folder = copy(ID);
        Path envelopes = folder.resolve("envelopes.csv");
        Files.writeString(envelopes, Files.readString(envelopes).replace("P-1001,2585-3911-5,", "P-1001,,"));
        accepted(asSupervisor(office).load(folder));
        List<Envelope> loaded = office.the(IntakeService.class).envelopes(new ElectionId(ID));
        assertThat(loaded)
                .isEqualTo(ElectionFolder.read(folder).envelopes())
                .first()
                .extracting(Envelope::receiptNo)
                .isNull();
    }

    @OnBothDatabases
    void a_missing_picture_leaves_nothing(TestOffice office) throws IOException {
        ElectionLoadService elections = asSupervisor(office);
        Path folder = copy("picture");
        Files.delete(folder.resolve("signatures/envelopes/P-1003.png"));
        assertThatThrownBy(() -> elections.load(folder))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("signatures/envelopes/P-1003.png: is missing");
        assertThat(office.the(ElectionService.class).all()).isEmpty();
        assertThat(rows(office, "envelope_image")).isZero();
    }

    @OnBothDatabases
    void a_room_that_cannot_take_its_part_takes_the_whole_load_back(TestOffice office) throws IOException {
        ElectionLoadService elections = asSupervisor(office);
        accepted(elections.load(PRIMARY));
        Path tooLong = copy("second-election");
        Path envelopes = tooLong.resolve("envelopes.csv");
        Files.writeString(envelopes, Files.readString(envelopes).replaceFirst("Okafor", "Okafor".repeat(100)));
        assertThatThrownBy(() -> elections.load(tooLong))
                .isInstanceOf(org.springframework.dao.DataIntegrityViolationException.class);
        assertThat(office.the(ElectionService.class).all()).containsExactly(new ElectionId(ID));
        assertThat(rows(office, "voter")).isEqualTo(5_000);
        assertThat(rows(office, "ledger_head")).isEqualTo(2);
    }

    @OnBothDatabases
    void only_a_supervisor_loads(TestOffice office) {
        Staff.hire(office, "ada", Role.REVIEWER, Role.INTAKE, Role.DECIDER);
        Staff.signIn("ada");
        assertThatThrownBy(() -> office.the(ElectionLoadService.class).load(PRIMARY))
                .isInstanceOf(NotPermittedException.class);
        assertThat(office.the(ElectionService.class).all()).isEmpty();
    }

    private static int rows(TestOffice office, String table) {
        return office.jdbc()
                .sql("select count(*) from " + table)
                .query(Integer.class)
                .single();
    }

    private Path copy(String name) throws IOException {
        Path target = temporary.resolve(name);
        try (Stream<Path> sources = Files.walk(PRIMARY)) {
            for (Path source : sources.toList()) {
                Files.copy(source, target.resolve(PRIMARY.relativize(source)));
            }
        }
        return target;
    }
}
