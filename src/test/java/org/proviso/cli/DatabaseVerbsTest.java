package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;

/** Verbs on the office's database, while no server runs and while one does. */
class DatabaseVerbsTest {

    @TempDir
    Path folder;

    private TestOffice office() {
        return TestOffice.over("jdbc:h2:file:" + folder.resolve("proviso") + ";WRITE_DELAY=0");
    }

    private Shell replay(String... election) {
        return election.length == 0
                ? Shell.run("replay", "--data", folder.toString())
                : Shell.run("replay", election[0], "--data", folder.toString());
    }

    @Test
    void replay_says_whether_tables_and_ledger_agree_and_the_ledger_is_exported() {
        TestOffice first = office();
        Primary.loaded(first);
        first.close();
        Shell whole = replay();
        assertThat(whole.exit()).as(whole.err()).isZero();
        assertThat(whole.out())
                .contains(Primary.ID + ": tables and ledger agree", "1 entries of the ledger fit", "60 cases");
        Path file = folder.resolve("ledger.jsonl");
        Shell written = Shell.run("export-ledger", Primary.ID, "--out", file.toString(), "--data", folder.toString());
        assertThat(written.out()).startsWith("written: 1 entries, head ");
        assertThat(Shell.run("verify-ledger", file.toString()).out()).startsWith("holds: 1 entries");
        TestOffice second = office();
        second.jdbc()
                .sql("update envelope_case set state = 'ended' where envelope_no = 'P-1001'")
                .update();
        second.close();
        Shell differs = replay(Primary.ID);
        assertThat(differs.exit()).isOne();
        assertThat(differs.out())
                .contains(
                        Primary.ID + ": DIFFERENCES FOUND: 1",
                        "- Envelope P-1001: in the table the case is ended, by the ledger it is open.");
        assertThat(replay("elsewhere").exit()).isEqualTo(2);
        assertThat(replay("elsewhere").err())
                .contains("is not an election of this office")
                .contains(Primary.ID);
    }

    @Test
    void what_voters_look_up_is_made_anew_line_by_line() {
        TestOffice first = office();
        Primary.loaded(first);
        List<Map<String, Object>> before = lines(first);
        first.jdbc()
                .sql("update status_line set voting_location = '', sealed = false")
                .update();
        first.close();
        Shell made = Shell.run("rebuild-status", "--data", folder.toString());
        assertThat(made.exit()).as(made.err()).isZero();
        assertThat(made.out()).isEqualToIgnoringNewLines(Primary.ID + ": " + before.size() + " lines");
        TestOffice second = office();
        assertThat(lines(second)).isEqualTo(before).isNotEmpty();
        second.close();
        assertThat(Shell.run("rebuild-status", "elsewhere", "--data", folder.toString())
                        .err())
                .contains("is not an election of this office");
    }

    private static List<Map<String, Object>> lines(TestOffice office) {
        return office.jdbc().sql("""
                        select key_hash, state, reasons, asks, source, voting_location, cast_on, sealed,
                            registration_found from status_line order by key_hash""").query().listOfRows();
    }

    @Test
    void a_database_that_is_missing_is_said_in_one_line_and_none_is_made() {
        Shell missing = replay();
        assertThat(missing.exit()).isEqualTo(2);
        assertThat(missing.out()).isEmpty();
        assertThat(ownWords(missing)).hasLineCount(1).contains("was not found: start the server once");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_database_that_the_server_holds_is_said_in_one_line() throws Exception {
        Process server = HeldDatabase.start(folder.resolve("proviso"));
        try {
            Shell held = replay();
            assertThat(held.exit()).isEqualTo(2);
            assertThat(held.out()).isEmpty();
            assertThat(ownWords(held))
                    .hasLineCount(1)
                    .contains("is in use by the running server: stop the server first");
        } finally {
            server.destroy();
            server.waitFor();
        }
    }

    /** Without what the logging library says of itself where another test of this program's run had reset it. */
    private static String ownWords(Shell shell) {
        return shell.err()
                .lines()
                .filter(line -> !line.contains("|-WARN in "))
                .collect(java.util.stream.Collectors.joining("\n", "", "\n"));
    }
}
