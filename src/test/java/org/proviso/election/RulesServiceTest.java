package org.proviso.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.proviso.core.act.ActResults.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Rules;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.files.packs.RulePacks;
import org.proviso.intake.LoadedOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** The rules in force, and those that were in force when something was assessed. */
class RulesServiceTest {

    private static final Path PRIMARY = Path.of("sample-cases", "tamarack-primary");
    private static final String ID = "tamarack-primary";

    @TempDir
    private Path temporary;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static RulesService rules(TestOffice office) {
        LoadedOffice.primary(office);
        return office.the(RulesService.class);
    }

    private static void rule(TestOffice office, String signedBy) {
        office.jdbc()
                .sql("insert into county_ruling values (?, 'moves.within_county', 'either', ?, ?, 'letter')")
                .params(ID, signedBy, LocalDate.of(2026, 8, 1))
                .update();
    }

    @OnADatabase
    void the_rules_in_force_are_those_of_the_shell_and_read_once(TestOffice office) {
        RulesService rules = rules(office);
        Election election =
                office.the(ElectionService.class).find(new ElectionId(ID)).orElseThrow();
        DeadlineBook book = rules.book(new ElectionId(ID));
        assertThat(book.pack().hash())
                .isEqualTo(PackResolver.resolve(
                                RulePacks.load(election.rulePack()),
                                election.date(),
                                RulePacks.rulings(election.rulings()))
                        .hash());
        assertThat(book.calendar().daysClosed()).isEqualTo(election.daysClosed());
        assertThat(rules.book(new ElectionId(ID))).isSameAs(book);
    }

    @OnADatabase
    void a_ruling_or_a_closed_day_changes_the_rules_at_once(TestOffice office) {
        RulesService rules = rules(office);
        DeadlineBook before = rules.book(new ElectionId(ID));
        rule(office, "A. Reyes");
        DeadlineBook ruled = rules.book(new ElectionId(ID));
        assertThat(ruled.pack().word(Rules.MOVES)).isEqualTo("either");
        assertThat(ruled.pack().hash()).isNotEqualTo(before.pack().hash());
        LocalDate closed = ruled.pack().electionDate().plusDays(7);
        office.jdbc()
                .sql("insert into election_closed_day values (?, ?)")
                .params(ID, closed)
                .update();
        assertThat(rules.book(new ElectionId(ID)).calendar().isOpen(closed)).isFalse();
        office.jdbc().sql("delete from county_ruling").update();
        assertThat(rules.book(new ElectionId(ID)).pack().hash())
                .isEqualTo(before.pack().hash());
    }

    @OnADatabase
    void the_rules_of_the_load_are_kept_and_named_in_the_ledger(TestOffice office) {
        DeadlineBook book = rules(office).book(new ElectionId(ID));
        assertThat(hashes(office)).containsExactly(book.pack().hash());
        assertThat(office.the(LedgerService.class)
                        .read(LedgerChain.of(new ElectionId(ID)), 0, 1)
                        .get(0)
                        .payload())
                .containsEntry("rules", book.pack().hash());
    }

    @OnADatabase
    void the_rules_of_an_earlier_assessment_are_still_there_after_a_ruling(TestOffice office) {
        RulesService rules = rules(office);
        DeadlineBook before = rules.book(new ElectionId(ID));
        rule(office, "A. Reyes");
        DeadlineBook ruled = office.inTransaction(() -> rules.keep(new ElectionId(ID)));
        office.inTransaction(() -> rules.keep(new ElectionId(ID)));
        assertThat(hashes(office))
                .containsExactlyInAnyOrder(before.pack().hash(), ruled.pack().hash());
        DeadlineBook back = rules.book(new ElectionId(ID), before.pack().hash());
        assertThat(back.pack().all()).isEqualTo(before.pack().all());
        assertThat(back.pack().hash()).isEqualTo(before.pack().hash());
        assertThat(back.calendar()).isEqualTo(before.calendar());
        assertThat(rules.book(new ElectionId(ID), ruled.pack().hash())
                        .pack()
                        .of(Rules.MOVES)
                        .signedBy())
                .isEqualTo("A. Reyes");
    }

    @OnADatabase
    void kept_rules_that_were_changed_are_found_out(TestOffice office) {
        RulesService rules = rules(office);
        String hash = rules.book(new ElectionId(ID)).pack().hash();
        office.jdbc()
                .sql(
                        "update resolved_pack set content = replace(content, '\"basis\":\"invented\"', '\"basis\":\"read\"')")
                .update();
        assertThatIllegalStateException()
                .isThrownBy(() -> rules.book(new ElectionId(ID), hash))
                .withMessageContaining("were changed");
        office.jdbc().sql("update resolved_pack set content = 'gone'").update();
        assertThatIllegalStateException()
                .isThrownBy(() -> rules.book(new ElectionId(ID), hash))
                .withMessageContaining("cannot be read: at character 1");
    }

    @OnADatabase
    void rules_that_were_never_in_force_and_elections_that_are_not_there_are_refused(TestOffice office) {
        RulesService rules = rules(office);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rules.book(new ElectionId(ID), "0".repeat(64)))
                .withMessageContaining("ever in force");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rules.book(new ElectionId("elsewhere")))
                .withMessageContaining("elsewhere");
    }

    @OnADatabase
    void a_pack_that_does_not_come_with_the_program_leaves_nothing(TestOffice office) throws IOException {
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        Path own = Files.createDirectories(temporary.resolve("own"));
        for (Path source : filesOf(PRIMARY)) {
            Files.copy(source, own.resolve(source.getFileName()));
        }
        Path yaml = own.resolve("election.yaml");
        Files.writeString(yaml, Files.readString(yaml).replaceAll("(?m)^rule_pack:.*$", "rule_pack: ours.yaml"));
        assertThat(refused(office.the(ElectionLoadService.class).load(own)))
                .returns(Why.NO_SUCH_RULE_PACK, Refusal::why)
                .extracting(Refusal::words)
                .asString()
                .contains("ours.yaml");
        assertThat(office.the(ElectionService.class).all()).isEmpty();
    }

    private static List<Path> filesOf(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private static List<String> hashes(TestOffice office) {
        return office.jdbc()
                .sql("select pack_hash from resolved_pack where election_id = ?")
                .param(ID)
                .query(String.class)
                .list();
    }
}
