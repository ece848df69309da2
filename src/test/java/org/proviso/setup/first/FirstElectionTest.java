package org.proviso.setup.first;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.files.election.ElectionFolder;

/** An office that begins with the typed facts and the files to begin from can load its election. */
class FirstElectionTest {

    private static final ElectionFacts FACTS = new ElectionFacts(
            "Osprey: \"General\" # 1",
            LocalDate.of(2026, 11, 3),
            Election.Kind.SPECIAL,
            "Osprey County",
            "America/Detroit",
            "example",
            new Election.DecidingBody(3, 2),
            new Election.Office(
                    "Osprey Office",
                    "1 Pier Rd, Osprey 49000",
                    "555-0142",
                    "office@example.org",
                    Map.of("en", "Monday to Friday: 8 to 5")),
            LocalTime.of(20, 0),
            List.of("en", "es"),
            Election.Receipts.CHECK_DIGIT);

    @TempDir
    Path folder;

    private ElectionFolder loaded() throws IOException {
        Path own = Files.createDirectory(folder.resolve("osprey"));
        Files.writeString(own.resolve("election.yaml"), FACTS.yaml());
        for (NeededFile file : NeededFile.values()) {
            Files.writeString(
                    own.resolve(file.file()), file.mayComeLater() ? TemplateFile.empty(file) : TemplateFile.text(file));
        }
        return ElectionFolder.read(own);
    }

    @Test
    void the_typed_facts_are_read_back_as_they_were_typed() throws IOException {
        assertThat(loaded().election())
                .isEqualTo(new Election(
                        new ElectionId("osprey"),
                        FACTS.name(),
                        FACTS.date(),
                        FACTS.kind(),
                        FACTS.county(),
                        ZoneId.of(FACTS.zone()),
                        FACTS.rulePack(),
                        FACTS.decider(),
                        FACTS.office(),
                        FACTS.pollsClose(),
                        FACTS.languages(),
                        List.of(),
                        Set.of(),
                        List.of(),
                        FACTS.receipts()));
    }

    @Test
    void each_file_to_begin_from_has_one_row_that_the_program_reads() throws IOException {
        ElectionFolder read = loaded();
        assertThat(read.contests()).hasSize(1);
        assertThat(read.styles()).hasSize(1);
        assertThat(read.precincts()).hasSize(1);
        assertThat(read.streets()).hasSize(1);
        assertThat(read.voters()).hasSize(1);
        assertThat(read.mailBallots()).hasSize(1);
        assertThat(read.checkIns()).hasSize(1);
        assertThat(read.votedElsewhere()).hasSize(1);
        assertThat(read.envelopes()).isEmpty();
        assertThat(read.transmittals()).isEmpty();
        assertThat(TemplateFile.text(NeededFile.ENVELOPES).lines()).hasSize(2).noneMatch(line -> line.contains(".png"));
    }

    @Test
    void a_list_that_would_show_a_second_ballot_is_never_taken_for_empty() {
        assertThat(NeededFilesTable.missing(List.of("contests.csv", "ballot-styles.csv", "precincts.csv", "roll.json")))
                .containsExactly("streets.csv", "mail-ballots.csv", "check-ins.csv");
    }
}
