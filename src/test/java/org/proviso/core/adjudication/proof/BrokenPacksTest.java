package org.proviso.core.adjudication.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.rules.ChangedPack;
import org.proviso.files.packs.RulePacks;

/** Packs broken on purpose, each in one way: the proof finds every one and names the promise that it breaks. */
class BrokenPacksTest {

    @TempDir
    Path folder;

    static List<Path> packs() throws IOException, URISyntaxException {
        try (Stream<Path> files =
                Files.list(Path.of(BrokenPacksTest.class.getResource("broken").toURI()))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("packs")
    void is_caught_and_the_broken_promise_is_named(Path file) throws IOException {
        ProofReport report = PackProof.proveForElection(RulePacks.load(file.toString()), ChangedPack.ELECTION_DAY);

        assertThat(report.holds()).isFalse();
        assertThat(report.violations()).extracting(Violation::promise).containsOnly(said(file, "# promise: "));
        assertThat(report.violations())
                .extracting(Violation::counterexample)
                .anyMatch(shown -> shown.contains(said(file, "# shows: ")));
    }

    @Test
    void there_are_more_than_ten_and_the_pack_below_them_is_sound() throws Exception {
        assertThat(packs()).hasSizeGreaterThanOrEqualTo(10);
        Path sound = Files.writeString(
                folder.resolve("sound.yaml"),
                "pack: sound\nname: Sound\nover: example\nillustrative: true\ncaution: Sound.\nrules: {}\n");
        assertThat(PackProof.proveForElection(RulePacks.load(sound.toString()), ChangedPack.ELECTION_DAY)
                        .violations())
                .isEmpty();
    }

    private static String said(Path file, String beginning) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.filter(line -> line.startsWith(beginning))
                    .map(line -> line.substring(beginning.length()))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
