package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.adjudication.facts.Fact;

/** What a verb prints, to the letter; the files were read through by hand before they were kept. */
class GoldenOutputTest {

    @TempDir
    Path folder;

    @Test
    void prints_the_deadlines_of_the_example() throws IOException {
        Shell run = Shell.run("deadlines", "--pack", "example", "--election-date", "2026-11-03");

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(kept("deadlines-example-2026-11-03.csv"));
    }

    @Test
    void moves_the_deadlines_by_the_days_the_office_is_closed() {
        Shell run = Shell.run(
                "deadlines", "--pack", "example", "--election-date", "2026-11-03", "--closed", "2026-11-10,2026-10-19");
        assertThat(run.out())
                .contains("registration,in_person,2026-10-20,", "registration,online,2026-10-19,")
                .contains("cure,identification,2026-11-12,");
    }

    @Test
    void says_what_no_source_says_under_the_federal_floor() {
        Shell run = Shell.run("deadlines", "--pack", "us", "--election-date", "2026-11-03");
        assertThat(run.out())
                .contains("decision,,,,unknown: the office must sign a county ruling,not in the rule pack");
    }

    @Test
    void assesses_a_case_that_counts_in_part() throws IOException {
        Path facts = Files.writeString(folder.resolve("facts.yaml"), kept("count-in-part.yaml"));
        Shell run = Shell.run(assess(facts, "2026-11-20T12:00"));

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(kept("count-in-part.out.yaml"));
    }

    @Test
    void weighs_the_stamp_and_the_notice_in_the_facts() throws IOException {
        String late = kept("count-in-part.yaml").replace("2026-11-06T15:30", "2026-11-10T17:01");
        Path facts = Files.writeString(folder.resolve("facts.yaml"), late);
        assertThat(Shell.run(assess(facts, "2026-11-20T12:00")).out())
                .startsWith("recommendation: \"research\"")
                .contains("no notice was logged as sent in time");

        Files.writeString(facts, late + "notices_sent:\n  identification: 2026-11-04T16:00\n");
        assertThat(Shell.run(assess(facts, "2026-11-20T12:00")).out()).startsWith("recommendation: \"reject\"");
        assertThat(Shell.run(assess(facts, "2026-11-10T17:00")).out())
                .startsWith("recommendation: \"wait for the voter\"");
    }

    @Test
    void describes_every_fact() {
        Shell run = Shell.run("assess", "--describe");
        assertThat(run.exit()).isZero();
        for (var fact : Fact.all()) {
            assertThat(run.out()).contains("  " + fact.key() + ":\n    meaning: \"" + fact.meaning());
        }
    }

    private static String[] assess(Path facts, String asOf) {
        return new String[] {
            "assess", "--pack", "example", "--election-date", "2026-11-03", "--as-of", asOf, "--facts", facts.toString()
        };
    }

    private static String kept(String name) throws IOException {
        try (InputStream file = GoldenOutputTest.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
