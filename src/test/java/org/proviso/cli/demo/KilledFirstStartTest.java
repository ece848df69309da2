package org.proviso.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.Proviso;

/**
 * First starts killed while they load the sample, at several moments of it: the next start loads it whole. It starts the
 * server five times, so it runs only under {@code CI=true}.
 */
@EnabledIfEnvironmentVariable(named = "CI", matches = "true")
class KilledFirstStartTest {

    private static final String LOADING = "Loading the sample election";
    private static final String READY = "Proviso is ready";

    @TempDir
    private Path data;

    @Test
    void a_first_start_killed_on_the_way_leaves_nothing_and_the_next_one_begins_again() throws Exception {
        for (int pause : new int[] {0, 1_500, 3_000}) {
            List<String> lines = linesUntil(LOADING, pause);
            assertThat(lines).as("begins to load").anyMatch(line -> line.contains(LOADING));
            if (lines.stream().anyMatch(line -> line.contains(READY))) {
                break;
            }
        }
        linesUntil(READY, 0);
        assertThat(linesUntil(READY, 0)).as("loaded already").noneMatch(line -> line.contains(LOADING));
    }

    /** What a server said until it said this and some time went by; then it was killed. */
    private List<String> linesUntil(String words, int pause) throws IOException, InterruptedException {
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Proviso.class.getName(),
                        "--server.port=0",
                        "--proviso.data=" + data)
                .redirectErrorStream(true)
                .start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader said = server.inputReader(StandardCharsets.UTF_8)) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                lines.add(line);
                if (line.contains(words)) {
                    Thread.sleep(pause);
                    server.toHandle().destroyForcibly();
                }
            }
        }
        server.waitFor();
        return lines;
    }
}
