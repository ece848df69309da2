package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample election with bad rows in its outside lists: the verbs go on without them where they are told to. */
class SetAsideOptionTest {

    private static final Path SAMPLE = Path.of("sample-cases/tamarack-general");

    @TempDir
    private Path temp;

    private Path broken;
    private Path aside;

    @BeforeEach
    void breakSomeRows() throws IOException {
        broken = Files.createDirectory(temp.resolve("election"));
        aside = temp.resolve("aside.csv");
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.skip(1).toList()) {
                Files.copy(file, broken.resolve(SAMPLE.relativize(file).toString()));
            }
        }
        append("roll.csv", "T0000001,Nobody,too,short\n");
        append("mail-ballots.csv", "T1695627,M999999,2026-09-31,void,2026-09-18\n");
        append("check-ins.csv", "T1514940,Cedar Forks School,noon,regular,yes,\n,,,,,\n");
        append("streets.csv", "800,999,both,E Nowhere St,Millbrook,49871,999,\n");
        append("voted-elsewhere.csv", "Verhoeven,Kenneth,,,1979-05-20,9492,V66184277,,in_person,2026-11-03\n");
    }

    @Test
    void the_rest_adjudicates_the_same() throws IOException {
        Path whole = temp.resolve("whole");
        assertThat(run("adjudicate", SAMPLE, "--out", whole).exit()).isZero();
        Path out = temp.resolve("out");
        Shell shell = run("adjudicate", broken, "--out", out, "--set-aside", aside);
        assertThat(shell.exit()).isZero();
        assertThat(shell.out().lines().filter(line -> line.startsWith("set aside:")))
                .containsExactly("set aside: 2 rows of check-ins.csv, 1 row of mail-ballots.csv, 1 row of roll.csv,"
                        + " 1 row of streets.csv, 1 row of voted-elsewhere.csv; written to " + aside);
        assertThat(out.resolve("recommendations.csv")).hasSameTextualContentAs(whole.resolve("recommendations.csv"));
        assertThat(Files.readString(out.resolve("summary.txt")))
                .contains("Rows set aside", "1 row of roll.csv")
                .startsWith(Files.readString(whole.resolve("summary.txt")).split("\n\n")[0]);
        assertThat(Files.readAllLines(out.resolve("ledger.jsonl")).get(0))
                .contains("\"set_aside\":{\"check-ins.csv\":2");
        assertThat(Files.readAllLines(aside))
                .hasSize(7)
                .contains("roll.csv,"
                        + Files.readAllLines(broken.resolve("roll.csv")).size()
                        + ",,has 4 fields but the header has "
                        + Files.readAllLines(SAMPLE.resolve("roll.csv")).get(0).split(",").length
                        + ",\"T0000001,Nobody,too,short\"");
        assertThat(Files.readString(aside)).contains("\"\"\"999\"\" is not in precincts.csv\"");
    }

    @Test
    void without_it_bad_rows_refuse_the_whole() {
        Path out = temp.resolve("out");
        assertThat(run("adjudicate", broken, "--out", out).exit()).isEqualTo(2);
        assertThat(out).doesNotExist();
    }

    @Test
    void good_lists_leave_a_file_with_a_header_only_and_the_same_run() throws IOException {
        Path whole = temp.resolve("whole");
        run("adjudicate", SAMPLE, "--out", whole);
        Path out = temp.resolve("out");
        Shell shell = run("adjudicate", SAMPLE, "--out", out, "--set-aside", aside);
        assertThat(shell.exit()).isZero();
        assertThat(shell.out()).contains("set aside: no rows; written to ");
        assertThat(aside).hasContent("list,line,column,reason,row\n");
        for (String file : List.of("recommendations.csv", "summary.txt", "ledger.jsonl", "report.html")) {
            assertThat(out.resolve(file)).hasSameTextualContentAs(whole.resolve(file));
        }
    }

    @Test
    void damage_to_a_list_and_a_bad_row_of_the_office_s_own_files_refuse_the_whole() throws IOException {
        append("streets.csv", "1,\"2\n");
        Shell shell = run("what-if", broken, "--pack", "us-co", "--set-aside", aside);
        assertThat(shell.exit()).isEqualTo(2);
        assertThat(shell.err()).contains("streets.csv").contains("never closed");
        assertThat(aside).doesNotExist();
        Files.copy(
                SAMPLE.resolve("streets.csv"),
                broken.resolve("streets.csv"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        append("precincts.csv", "1\n");
        assertThat(run("measure", broken, "--envelopes", 1, "--set-aside", aside)
                        .exit())
                .isEqualTo(2);
        assertThat(aside).doesNotExist();
    }

    @Test
    void a_match_goes_on_without_bad_rows_of_the_roll() throws IOException {
        Path whole = temp.resolve("whole.csv");
        Path links = temp.resolve("links.csv");
        Path envelopes = SAMPLE.resolve("envelopes.csv");
        assertThat(run("match", "--roll", SAMPLE.resolve("roll.csv"), "--envelopes", envelopes, "--out", whole)
                        .exit())
                .isZero();
        Path roll = broken.resolve("roll.csv");
        Shell shell = run("match", "--roll", roll, "--envelopes", envelopes, "--out", links, "--set-aside", aside);
        assertThat(shell.exit()).isZero();
        assertThat(shell.out()).contains("set aside: 1 row of roll.csv; written to ");
        assertThat(links).hasSameTextualContentAs(whole);
        assertThat(run("match", "--roll", roll, "--envelopes", envelopes, "--out", links)
                        .exit())
                .isEqualTo(2);
    }

    private void append(String name, String row) throws IOException {
        Files.writeString(broken.resolve(name), row, StandardOpenOption.APPEND);
    }

    private static Shell run(Object... arguments) {
        return Shell.run(Stream.of(arguments).map(String::valueOf).toArray(String[]::new));
    }
}
