package org.proviso.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.files.InputException;
import org.proviso.journey.Office;

/** How far a load is can be read while it runs, and no longer. */
class LoadWatchTest {

    private static final Path PRIMARY = Path.of("sample-cases", "tamarack-primary");

    @TempDir
    private Path temporary;

    @OnADatabase
    void a_load_says_what_it_does_and_how_many_rows_are_done(TestOffice services) {
        Office.staffed(services);
        LoadWatch watch = services.the(LoadWatch.class);
        List<LoadStep> steps = new ArrayList<>();
        List<Boolean> seen = new ArrayList<>();
        watch.hear(step -> {
            steps.add(step);
            seen.add(watch.now().equals(java.util.Optional.of(step)));
        });
        as("carl", () -> accepted(services.the(ElectionLoadService.class).load(PRIMARY)));
        assertThat(steps)
                .contains(
                        new LoadStep("The files are being read and checked", 5_000, 0),
                        new LoadStep("Saving the roll", 1_000, 5_000),
                        new LoadStep("Saving the roll", 5_000, 5_000),
                        new LoadStep("The envelopes are being assessed", 60, 60));
        assertThat(steps.stream().map(LoadStep::words).distinct())
                .containsExactly(
                        "The files are being looked at",
                        "The files are being read and checked",
                        "Saving the roll",
                        "Saving the other lists",
                        "The envelopes are being matched",
                        "The envelopes are being assessed",
                        "The tables are being made ready",
                        "What was written is being made final");
        assertThat(seen).as("what a page would see").doesNotContain(false);
        assertThat(watch.now()).isEmpty();
    }

    @OnADatabase
    void a_load_that_is_refused_is_no_longer_under_way(TestOffice services) throws IOException {
        Office.staffed(services);
        Path folder = copied();
        Files.writeString(
                folder.resolve("roll.csv"),
                Files.readString(folder.resolve("roll.csv")).replaceFirst("\nT", "\n,T"));
        ElectionLoadService elections = services.the(ElectionLoadService.class);
        assertThatThrownBy(() -> as("carl", () -> elections.load(folder))).isInstanceOf(InputException.class);
        assertThat(services.the(LoadWatch.class).now()).isEmpty();
    }

    @Test
    void figures_are_written_as_people_read_them() {
        assertThat(new LoadStep("Writing", 0, 0).figures()).isEmpty();
        assertThat(new LoadStep("Writing", 300_000, 0).figures()).isEqualTo("300,000 rows");
        assertThat(new LoadStep("Writing", 300_000, 1_000_000).figures()).isEqualTo("300,000 of 1,000,000 rows");
    }

    private Path copied() throws IOException {
        try (Stream<Path> files = Files.list(PRIMARY)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, temporary.resolve(file.getFileName()));
            }
        }
        return temporary;
    }
}
