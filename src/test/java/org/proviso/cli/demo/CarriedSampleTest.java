package org.proviso.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.Election;
import org.proviso.files.election.ElectionFolder;

/** What the program carries is the published election, whole. */
class CarriedSampleTest {

    private static final Path PUBLISHED = Path.of("sample-cases", "tamarack-general");

    @TempDir
    private Path folder;

    @Test
    void the_copy_is_the_published_folder_file_for_file() throws IOException {
        Path copy = CarriedSample.copyTo(folder);
        List<Path> files = files(PUBLISHED);
        assertThat(files).hasSizeGreaterThan(600);
        assertThat(files(copy)).isEqualTo(files);
        for (Path file : files) {
            assertThat(copy.resolve(file)).hasSameBinaryContentAs(PUBLISHED.resolve(file));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(folder::relativize)
                    .sorted()
                    .toList();
        }
    }

    @Test
    void the_work_begins_at_nine_on_the_morning_after_election_day_by_the_county_s_clock() {
        Election election = ElectionFolder.read(PUBLISHED).election();
        assertThat(CarriedSample.WORK_BEGINS)
                .isEqualTo(election.date()
                        .plusDays(1)
                        .atTime(LocalTime.of(9, 0))
                        .atZone(election.zone())
                        .toInstant());
    }
}
