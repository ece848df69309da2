package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseService;
import org.proviso.review.replay.CaseReplay;

/**
 * A process killed in the middle of acts, three times over the same file, has every act that it acknowledged. It starts
 * three programs one after the other, so it runs only under {@code CI=true}.
 */
@EnabledIfEnvironmentVariable(named = "CI", matches = "true")
class KilledTest {

    private static final int ROUNDS = 3;
    private static final int ACTS_A_ROUND = 40;
    private static final int SIGKILL = 128 + 9;

    /** Acts by "act envelope pseudonym", how often. */
    private final Map<String, Integer> acknowledged = new HashMap<>();

    /** The version in which each case was last acknowledged. */
    private final Map<String, Integer> versions = new HashMap<>();

    @TempDir
    Path folder;

    /** The database as the office's own settings have it, in this folder. */
    private String url() throws IOException {
        Properties settings = new Properties();
        try (InputStream file = getClass().getResourceAsStream("/application.properties")) {
            settings.load(file);
        }
        String url = settings.getProperty("spring.datasource.url").replace("${proviso.data:./data}", folder.toString());
        assertThat(url).startsWith("jdbc:h2:file:" + folder).doesNotContain("$");
        return url;
    }

    @Test
    void every_act_that_was_acknowledged_is_there_after_a_kill() throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            List<String> lines = killed(round);
            TestOffice office = TestOffice.over(url());
            try {
                lines.forEach(line -> note(office, line));
                check(office);
            } finally {
                office.close();
            }
        }
        assertThat(acknowledged.values().stream().mapToInt(times -> times).sum())
                .isGreaterThanOrEqualTo(ROUNDS * ACTS_A_ROUND);
    }

    /** What a process said until it was killed after some acts, with what it said in the moment of its end. */
    private List<String> killed(int round) throws IOException, InterruptedException {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx400m",
                        "-cp",
                        classes,
                        KilledOffice.class.getName(),
                        url(),
                        String.valueOf(round))
                .redirectError(folder.resolve("round-" + round + ".txt").toFile())
                .start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                if (line.startsWith("done ") && line.endsWith(KilledOffice.END)) {
                    lines.add(line.substring(0, line.length() - KilledOffice.END.length()));
                }
                if (lines.size() == ACTS_A_ROUND) {
                    process.toHandle().destroyForcibly();
                }
            }
        }
        assertThat(process.waitFor()).as("ended by the kill").isEqualTo(SIGKILL);
        return lines;
    }

    private void note(TestOffice office, String line) {
        String[] words = line.split(" ");
        UserName by = new UserName(office.the(StaffList.class)
                .user(new UserName(words[3]))
                .orElseThrow()
                .actor()
                .pseudonym());
        acknowledged.merge(words[1] + " " + words[2] + " " + by, 1, Integer::sum);
        versions.merge(words[2], Integer.parseInt(words[4]), Math::max);
    }

    private void check(TestOffice office) {
        Map<String, Integer> inLedger = new HashMap<>();
        office.the(LedgerService.class)
                .follow(
                        LedgerChain.of(new ElectionId(Primary.ID)),
                        entry -> inLedger.merge(
                                entry.act() + " " + entry.subject() + " " + entry.actor(), 1, Integer::sum));
        acknowledged.forEach((act, times) ->
                assertThat(inLedger.getOrDefault(act, 0)).as(act).isGreaterThanOrEqualTo(times));
        versions.forEach((envelope, version) -> assertThat(office.the(CaseService.class)
                        .find(new EnvelopeKey(new ElectionId(Primary.ID), new EnvelopeNumber(envelope)))
                        .orElseThrow()
                        .version())
                .as(envelope)
                .isGreaterThanOrEqualTo(version));
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(Primary.ID)))
                        .fault())
                .isEmpty();
        assertThat(office.the(CaseReplay.class)
                        .replay(new ElectionId(Primary.ID))
                        .first())
                .isEmpty();
    }
}
