package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.SmallChain;
import org.proviso.files.PackText;

/** Exit code 2 and one clear line for bad input, 1 where the answer is no, 0 where the job is done. */
class BadInputTest {

    private static final String DATES = " --election-date 2026-11-03 --as-of 2026-11-04T12:00 ";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"adjudicate", "assess", "deadlines", "check-rules", "verify-ledger"})
    void explains_each_verb(String verb) {
        Shell run = Shell.run(verb, "--help");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("Usage: proviso " + verb);
        assertThat(CommandLineApp.isVerb(new String[] {verb})).isTrue();
    }

    @Test
    void knows_its_verbs_from_the_servers_arguments() {
        assertThat(CommandLineApp.isVerb(new String[] {})).isFalse();
        assertThat(CommandLineApp.isVerb(new String[] {"--server.port=8081"})).isFalse();
        assertThat(CommandLineApp.isVerb(new String[] {"--version"})).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "deadlines --pack example | Missing required option: '--election-date=D'",
                "deadlines --election-date 2026-11-03 | (--pack=P | --state=S)",
                "deadlines --pack example --election-date 11/03/2026 | '--election-date'",
                "deadlines --state CA --pack us-ca --election-date 2026-11-03 | --pack=P, --state=S are mutually exclusive",
                "deadlines --state mars --election-date 2026-11-03 | us-mars: is not a bundled rule pack",
                "deadlines --state CA --election-date 2026-11-03 --ics --zone Denver | is not a time zone",
                "deadlines --pack mars --election-date 2026-11-03 | mars: is not a bundled rule pack",
                "deadlines --pack example --election-date 2026-11-03 --closed soon | '--closed'",
                "assess | missing --pack, --election-date, --as-of, --facts",
                "assess --pack example | missing --election-date, --as-of, --facts",
                "assess --pack example --election-date 2026-11-03 --as-of noon --facts f | '--as-of'",
                "check-rules | name one rule pack, or use --all",
                "check-rules us --all | name one rule pack, or use --all",
                "check-rules mars | mars: is not a bundled rule pack",
                "check-rules us --election-date soon | '--election-date'",
                "verify-ledger | Missing required parameter: 'FILE'",
                "verify-ledger none.jsonl | none.jsonl: is not a file",
                "adjudicate nowhere --out out | nowhere: is not a folder",
                "adjudicate nowhere | Missing required option: '--out=DIR'",
                "adjudicate nowhere --out out --as-of noon | '--as-of'",
                "deadlines --pack example --election-date 2026-11-03 --colour | Unknown option: '--colour'"
            })
    void refuses_wrong_options_in_one_line(String line, String message) {
        Shell run = Shell.run(line.split(" "));
        refused(run, message);
        assertThat(run.err()).startsWith("proviso " + line.split(" ")[0] + ": ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "facts: {mood: glad} | line 1, key facts.mood: is not a fact",
                "facts: {check_in: perhaps} | line 1, key facts.check_in: \"perhaps\" is not one of",
                "facts: {check_in: [voted]} | line 1, key facts.check_in:",
                "facts: {identification: {value: supplied}} | line 1, key facts.identification: needs received_at",
                "facts: {check_in: {value: voted, when: now}} | line 1, key facts.check_in.when: is not a known key",
                "fact: {check_in: none} | line 1, key fact: is not a known key here",
                "contests: {cast: [A]} | key facts: is missing",
                "'{facts: {check_in: none}, contests: {cast: [A]}}' | key contests.right: is missing",
                "'{facts: {check_in: none}, contests: {cast: [A, A], right: []}}' | \"A\" appears twice",
                "'{facts: {check_in: none}, notices_sent: {money: 2026-11-04T12:00}}' | is not something a voter may be asked for",
                "'{facts: {check_in: none}, notices_sent: {signature: today}}' | is not a local date and time",
                "'{facts: {check_in: none}, rulings: [{rule: moves.anywhere, signed_by: X, on: 2026-10-01, ground: letter}]}' | is not a known rule"
            })
    void refuses_wrong_facts_with_line_and_key(String yaml, String message) throws IOException {
        Path facts = Files.writeString(folder.resolve("facts.yaml"), yaml + "\n");
        refused(Shell.run(("assess --pack example" + DATES + "--facts " + facts).split(" ")), message);
    }

    @Test
    void refuses_a_file_that_is_missing_or_in_another_encoding() throws IOException {
        Path none = folder.resolve("none.yaml");
        refused(Shell.run(("assess --pack example" + DATES + "--facts " + none).split(" ")), "none.yaml: is missing");

        Path latin = folder.resolve("latin.yaml");
        Files.write(latin, "facts: {check_in: none} # caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        refused(Shell.run(("assess --pack example" + DATES + "--facts " + latin).split(" ")), "UTF-8");
        refused(Shell.run("check-rules", latin.toString()), "UTF-8");
        refused(Shell.run("verify-ledger", latin.toString()), "UTF-8");
    }

    @Test
    void refuses_an_output_folder_that_holds_something_else() throws IOException {
        Files.writeString(folder.resolve("letter.txt"), "mine");
        refused(Shell.run("adjudicate", "nowhere", "--out", folder.toString()), "does not contain an earlier run");
        Path file = folder.resolve("letter.txt");
        refused(Shell.run("adjudicate", "nowhere", "--out", file.toString()), "is a file; --out needs a folder");
        assertThat(file).hasContent("mine");
    }

    @Test
    void says_no_with_exit_code_one_for_a_broken_ledger() throws IOException {
        List<String> lines =
                SmallChain.of(3).entries().stream().map(LedgerEntry::line).collect(Collectors.toList());
        Path ledger = Files.write(folder.resolve("ledger.jsonl"), lines);
        Shell holds = Shell.run("verify-ledger", ledger.toString());
        assertThat(holds.exit()).isZero();
        assertThat(holds.out())
                .isEqualTo("holds: 3 entries, head " + SmallChain.of(3).headHash() + "\n");

        lines.remove(1);
        Files.write(ledger, lines);
        Shell broken = Shell.run("verify-ledger", ledger.toString());
        assertThat(broken.exit()).isEqualTo(1);
        assertThat(broken.out())
                .contains("BROKEN: ledger.jsonl line 2: entry 3 follows entry 1", "1 entries before it are intact.");
    }

    @Test
    void says_no_with_exit_code_one_for_a_broken_pack() {
        Path broken = PackText.of("example")
                .value("consequence.voted_in_person", "none")
                .basis("consequence.voted_in_person", "memory")
                .in(folder);
        Shell refused = Shell.run("check-rules", broken.toString());
        assertThat(refused.exit()).isEqualTo(1);
        assertThat(refused.out()).contains("BROKEN: A ballot never counts", "check_in is voted", "REFUSED");

        Shell holds = Shell.run("check-rules", "--all");
        assertThat(holds.exit()).isZero();
        assertThat(holds.out()).contains("us: Federal floor", "example: Example State", "  holds");
    }

    private static void refused(Shell run, String message) {
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains(message).doesNotContain("\tat ");
        assertThat(run.err().lines()).hasSize(1);
    }
}
