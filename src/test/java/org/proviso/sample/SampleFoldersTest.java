package org.proviso.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class SampleFoldersTest {

    private static final long LIMIT = 12_000_000;

    @TempDir
    Path folder;

    @Test
    void two_runs_with_one_seed_give_the_same_bytes() throws IOException {
        Samples.write("tamarack-primary", 7, folder.resolve("one"));
        Samples.write("tamarack-primary", 7, folder.resolve("two"));
        SortedMap<String, byte[]> first = files(folder.resolve("one"));
        SortedMap<String, byte[]> second = files(folder.resolve("two"));
        assertThat(first).hasSizeGreaterThan(50);
        assertThat(first.keySet()).isEqualTo(second.keySet());
        first.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(second.get(name)));
    }

    @Test
    void another_seed_gives_other_people_and_the_same_scenarios() {
        SampleElection other = Samples.make("tamarack-primary", 7);
        assertThat(other.tables().get("roll.csv").get(0).values())
                .isNotEqualTo(Made.table(Made.PRIMARY, "roll.csv").get(0).values());
        assertThat(other.truth().stream().map(row -> row.get("scenario")))
                .containsExactlyInAnyOrderElementsOf(Made.PRIMARY.truth().stream()
                        .map(row -> row.get("scenario"))
                        .toList());
    }

    @Test
    void the_published_folders_are_what_the_command_makes() throws IOException {
        assertThat(run("--out", folder.toString())).isZero();
        SortedMap<String, byte[]> published = files(Path.of("sample-cases"));
        SortedMap<String, byte[]> made = files(folder);
        assertThat(published.keySet()).containsAll(made.keySet());
        made.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(published.get(name)));
    }

    @Test
    void the_published_folders_stay_small_and_hold_nothing_else() throws IOException {
        SortedMap<String, byte[]> published = files(Path.of("sample-cases"));
        assertThat(published.values().stream().mapToLong(bytes -> bytes.length).sum())
                .isLessThan(LIMIT);
        for (SampleElection election : Made.both()) {
            assertThat(published.keySet().stream().filter(name -> name.startsWith(election.id() + "/signatures")))
                    .hasSameSizeAs(election.pictures().keySet());
        }
    }

    @Test
    void an_unknown_name_is_refused_and_nothing_is_written() throws IOException {
        assertThat(run("--name", "tamarack-primary", "--name", "nowhere", "--out", folder.toString()))
                .isNotZero();
        assertThat(files(folder)).isEmpty();
        assertThatThrownBy(() -> Samples.make("nowhere", 1))
                .hasMessage("no sample election \"nowhere\"; there are tamarack-general and tamarack-primary");
    }

    @Test
    void wrong_options_are_refused_in_words() {
        StringWriter words = new StringWriter();
        assertThat(run(words, "--name", "atlantis", "--out", folder.toString())).isEqualTo(2);
        assertThat(words.toString()).contains("no sample election \"atlantis\"");
        assertThat(run(words, "--seed", "many", "--out", folder.toString())).isEqualTo(2);
        assertThat(words.toString()).contains("'--seed'");
    }

    @Test
    void pictures_of_an_earlier_run_do_not_stay_behind() throws IOException {
        Path old = folder.resolve("tamarack-primary/signatures/roll/T0000000-1.png");
        Files.createDirectories(old.getParent());
        Files.writeString(old, "old");
        Samples.write("tamarack-primary", 7, folder);
        assertThat(old).doesNotExist();
    }

    private static int run(String... arguments) {
        return run(new StringWriter(), arguments);
    }

    private static int run(StringWriter words, String... arguments) {
        return new CommandLine(new MakeSample())
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(words))
                .execute(arguments);
    }

    private static SortedMap<String, byte[]> files(Path root) throws IOException {
        SortedMap<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                found.put(root.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        }
        return found;
    }
}
