package org.proviso.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The theme's words can be read on its papers, by day and by night, and it fetches nothing from elsewhere. */
class ThemeTest {

    private static final Path THEME = Path.of("frontend", "themes", "proviso");
    private static final Pattern COLOR = Pattern.compile("--([a-z-]+): #([0-9a-f]{6});");
    private static final Pattern ADDRESS = Pattern.compile("url\\(\"([^\"]+)\"\\)");

    /** WCAG 2.2, 1.4.3: the least contrast of text of ordinary size. */
    private static final double LEAST = 4.5;

    /** A size of type as a style writes it: of the scale, or the surroundings' own. */
    private static final Pattern SIZE = Pattern.compile("(?:^|[\\s;{-])font(?:-size)?: *([^;}]+)", Pattern.MULTILINE);

    private static final Pattern OF_THE_SCALE = Pattern.compile("(?:[1-9]00 )?var\\(--[a-z0-9-]+\\)(?: .*)?|inherit");
    private static final Pattern WIDTH = Pattern.compile("max-width: (?:[4-9]\\d|\\d{3,})(?:\\.\\d+)?rem;");

    private static Map<String, String> colors(String css) {
        Map<String, String> colors = new LinkedHashMap<>();
        COLOR.matcher(css).results().forEach(found -> colors.put(found.group(1), found.group(2)));
        return colors;
    }

    /** WCAG 2.2, definition of relative luminance. */
    private static double luminance(String hex) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double channel = Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double contrast(String color, String other) {
        double first = luminance(color);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static void assertReadable(Map<String, String> colors) {
        for (String word : List.of("ink", "soft", "accent", "wait", "stop")) {
            for (String paper : List.of("paper", "sheet")) {
                assertThat(contrast(colors.get(word), colors.get(paper)))
                        .as(word + " on " + paper)
                        .isGreaterThanOrEqualTo(LEAST);
            }
        }
        for (String word : List.of("accent", "wait", "stop")) {
            assertThat(contrast(colors.get(word), colors.get(word + "-wash")))
                    .as(word + " on its wash")
                    .isGreaterThanOrEqualTo(LEAST);
        }
    }

    @Test
    void contrast_is_measured_as_the_guideline_says() {
        assertThat(contrast("000000", "ffffff")).isEqualTo(21.0);
        assertThat(contrast("777777", "ffffff")).isBetween(4.47, 4.49);
    }

    @Test
    void every_color_for_words_can_be_read_by_day_and_by_night() throws IOException {
        String[] schemes = Files.readString(THEME.resolve("tokens.css")).split("prefers-color-scheme: dark");
        assertThat(schemes).hasSize(2);
        assertReadable(colors(schemes[0]));
        assertReadable(colors(schemes[1]));
    }

    @Test
    void every_size_of_type_is_one_of_the_scale() throws IOException {
        for (Path sheet : sheets()) {
            assertThat(sizes(Files.readString(sheet)))
                    .as(sheet.toString())
                    .allMatch(size -> OF_THE_SCALE.matcher(size).matches());
        }
        assertThat(sizes("a { font-size: 0.9rem; }"))
                .noneMatch(size -> OF_THE_SCALE.matcher(size).matches());
        assertThat(sizes("a { font: 600 14px/1.2 serif }"))
                .noneMatch(size -> OF_THE_SCALE.matcher(size).matches());
        assertThat(sizes("--field-font-size: 12px;"))
                .noneMatch(size -> OF_THE_SCALE.matcher(size).matches());
    }

    /** A page that is as wide as none other is wide by a name of its own. */
    @Test
    void every_page_is_as_wide_as_a_name_says() throws IOException {
        for (Path sheet : sheets()) {
            assertThat(WIDTH.matcher(Files.readString(sheet)).results().map(MatchResult::group))
                    .as(sheet.toString())
                    .isEmpty();
        }
        assertThat(WIDTH.matcher("max-width: 92rem;").find()).isTrue();
    }

    /** Sizes are the theme's, so a page of Java or a template never sets one; letters have their own, in points of paper. */
    @Test
    void no_page_sets_a_size_of_type() throws IOException {
        Pattern sized = Pattern.compile("font-?[sS]ize|\\bstyle=\"[^\"]*font");
        for (Path folder : List.of(Path.of("src", "main", "java"), Path.of("src", "main", "resources", "templates"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                List<Path> pages = files.filter(Files::isRegularFile)
                        .filter(file -> !file.endsWith(Path.of("notices", "letters.html")))
                        .toList();
                assertThat(pages).hasSizeGreaterThan(10);
                for (Path page : pages) {
                    assertThat(Files.readString(page)).as(page.toString()).doesNotContainPattern(sized);
                }
            }
        }
    }

    private static List<String> sizes(String css) {
        return SIZE.matcher(css).results().map(found -> found.group(1).strip()).toList();
    }

    private static List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.list(THEME)) {
            return files.filter(file -> file.toString().endsWith(".css"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void the_theme_fetches_only_files_of_its_own() throws IOException {
        List<Path> sheets = sheets();
        assertThat(sheets).hasSizeGreaterThanOrEqualTo(4);
        for (Path sheet : sheets) {
            assertThat(ADDRESS.matcher(Files.readString(sheet))
                            .results()
                            .map(MatchResult::group)
                            .toList())
                    .as(sheet.toString())
                    .noneMatch(address -> address.contains("//"));
            assertThat(ADDRESS.matcher(Files.readString(sheet)).results().map(found -> found.group(1)))
                    .allMatch(address -> Files.exists(THEME.resolve(address)));
        }
    }
}
