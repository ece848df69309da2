package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.chain.Sha256;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.ledger.LedgerFile;

class AdjudicateCommandTest {

    private static final String PRIMARY = "sample-cases/tamarack-primary";

    @TempDir
    Path folder;

    @Test
    void two_runs_give_identical_bytes_whatever_the_threads() throws IOException {
        Path first = folder.resolve("one");
        Path second = folder.resolve("two");

        assertThat(adjudicate(PRIMARY, first, "--threads", "1")).isZero();
        assertThat(adjudicate(PRIMARY, second, "--threads", "4")).isZero();

        assertThat(hashes(first))
                .isEqualTo(hashes(second))
                .containsKeys("ledger.jsonl", "recommendations.csv", "summary.txt");
    }

    @Test
    void the_ledger_verifies_and_names_no_voter() throws IOException {
        assertThat(adjudicate(PRIMARY, folder)).isZero();

        Path ledger = folder.resolve("ledger.jsonl");
        assertThat(LedgerFile.verify(ledger).fault()).isEmpty();
        assertThat(LedgerFile.verify(ledger).entries()).isEqualTo(60 + 3);
        assertThat(Files.readString(ledger))
                .doesNotContainPattern("\"T[0-9]{7}\"")
                .doesNotContain("Galindo");
    }

    @Test
    void an_earlier_run_is_replaced_and_leaves_no_old_page() throws IOException {
        assertThat(adjudicate(PRIMARY, folder)).isZero();
        Path stale = Files.writeString(folder.resolve("explanations/X-9.txt"), "of an earlier run");

        assertThat(adjudicate(PRIMARY, folder)).isZero();

        assertThat(stale).doesNotExist();
    }

    @Test
    void a_folder_with_other_things_in_it_is_left_alone() throws IOException {
        Files.writeString(folder.resolve("letter.txt"), "mine");

        assertThat(adjudicate(PRIMARY, folder)).isEqualTo(2);

        assertThat(Files.list(folder)).containsExactly(folder.resolve("letter.txt"));
    }

    @Test
    void a_bad_election_folder_writes_nothing() {
        Path out = folder.resolve("out");

        assertThat(adjudicate(folder.toString(), out)).isEqualTo(2);

        assertThat(out).doesNotExist();
    }

    @Test
    void a_protected_address_stands_on_no_page() throws IOException {
        assertThat(adjudicate(PRIMARY, folder)).isZero();
        ElectionFolder election = ElectionFolder.read(Path.of(PRIMARY));
        int seen = 0;

        for (CaseReport report : AdjudicationRun.of(
                        election, election.election().date().plusDays(1).atTime(12, 0), 1)
                .cases()) {
            Voter voter = report.voter().filter(Voter::confidential).orElse(null);
            if (voter != null) {
                String page = Files.readString(folder.resolve("explanations").resolve(OutputFolder.pageName(report)));
                assertThat(page)
                        .contains("protected address")
                        .doesNotContain(
                                report.envelope().affirmation().residence().line())
                        .doesNotContain(voter.residence().address().line());
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }

    private static int adjudicate(String election, Path out, String... more) {
        String[] arguments = Stream.concat(Stream.of("adjudicate", election, "--out", out.toString()), Stream.of(more))
                .toArray(String[]::new);
        return CommandLineApp.run(arguments);
    }

    private static Map<String, String> hashes(Path folder) throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                hashes.put(folder.relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
            }
        }
        return hashes;
    }
}
