package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.rules.Rule;

/** Cases of law and practice, each through {@code assess} as counsel would run it. */
class DecisionCasesTest {

    /** Cases that come out otherwise than their source says, and why. */
    private static final Map<String, String> DISAGREE = Map.of();

    @TempDir
    Path folder;

    static List<DecisionCase> cases() {
        return DecisionCase.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void comes_out_as_the_source_says(DecisionCase decisionCase) throws IOException {
        assumeThat(DISAGREE).doesNotContainKey(decisionCase.id());
        String[] expected = decisionCase.outcome().split(": |, ");
        Shell run = assessed(decisionCase);

        assertThat(run.err()).isEmpty();
        assertThat(line(run, "recommendation")).as(run.out()).isEqualTo("\"" + expected[0] + "\"");
        assertThat(line(run, "held_apart")).isEqualTo(decisionCase.outcome().contains("held apart") ? "yes" : "no");
        if (decisionCase.outcome().contains(": ")) {
            assertThat(line(run, "reasons")).contains(expected[1]);
        }
        if (decisionCase.outcome().contains("held by ")) {
            String gate = expected[1].substring("held by ".length());
            assertThat(decisionCase.resolved().isYes(Rule.find(gate).orElseThrow()))
                    .isTrue();
        }
    }

    @Test
    void names_a_source_for_every_parameter_and_case() {
        assertThat(DecisionCase.all())
                .hasSize(72)
                .allSatisfy(decisionCase -> assertThat(decisionCase.source()).isNotBlank());
        assertThat(DecisionCase.all()).extracting(DecisionCase::id).doesNotHaveDuplicates();
        assertThat(DecisionCase.parameters()).allSatisfy(parameter -> {
            assertThat(parameter.source()).isNotBlank();
            assertThat(Rule.find(parameter.rule())).as(parameter.rule()).isPresent();
        });
    }

    private Shell assessed(DecisionCase decisionCase) throws IOException {
        Path facts = Files.writeString(folder.resolve("facts.yaml"), decisionCase.file());
        return Shell.run(
                "assess",
                "--pack",
                decisionCase.pack(),
                "--election-date",
                decisionCase.election().toString(),
                "--as-of",
                decisionCase.asOf(),
                "--facts",
                facts.toString());
    }

    private static String line(Shell run, String key) {
        return run.out()
                .lines()
                .filter(line -> line.startsWith(key + ": "))
                .map(line -> line.substring(key.length() + 2))
                .findFirst()
                .orElse(run.out());
    }
}
