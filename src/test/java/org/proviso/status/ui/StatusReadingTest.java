package org.proviso.status.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.proviso.status.ui.StatusWordsTest.words;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.Shared;
import org.proviso.core.rules.ReasonText;
import org.proviso.files.packs.RulePacks;

/** The voter's page is read at grade 8 or below, in sentences of about twenty words (common practice). */
class StatusReadingTest {

    private static final double GRADE = 8.0;
    private static final int LONGEST = 25;

    private static String english(Properties words, String key) {
        return words.getProperty(key)
                .replace("''", "'")
                .replace("{0}", "Birch Hall")
                .replace("{1}", "Friday");
    }

    /** The reasons stand in the rule pack, not among the words of the page. */
    private static Stream<String> reasons() {
        return RulePacks.load("us").reasons().values().stream().map(ReasonText::notice);
    }

    private static boolean isSentence(String text) {
        return text.matches(".*\\s.*[.?!]");
    }

    @Test
    void the_whole_page_is_read_at_grade_8() throws IOException {
        Properties words = words("status.properties");
        StringBuilder page = new StringBuilder();
        Stream.concat(words.stringPropertyNames().stream().sorted().map(key -> english(words, key)), reasons())
                .filter(StatusReadingTest::isSentence)
                .forEach(text -> page.append(text).append(' '));
        ReadingGrade read = ReadingGrade.of(page.toString());
        assertThat(read.words()).isGreaterThan(500);
        assertThat(read.grade()).isLessThan(GRADE);
    }

    @Test
    void no_sentence_is_long() throws IOException {
        Properties words = words("status.properties");
        Map<String, Integer> tooLong = new TreeMap<>();
        Stream.concat(words.stringPropertyNames().stream().map(key -> english(words, key)), reasons())
                .flatMap(text -> Stream.of(text.split("(?<=[.?!:])\\s")))
                .forEach(sentence -> {
                    int length = ReadingGrade.of(sentence).words();
                    if (length > LONGEST) {
                        tooLong.put(sentence, length);
                    }
                });
        assertThat(tooLong).isEmpty();
    }

    /** Where the shared examples are beside the project; their syllables were counted by others. */
    @Test
    void the_grade_is_that_of_the_published_examples() throws IOException {
        for (String line : Files.readAllLines(Shared.file("data/readability/flesch-examples.csv"))
                .subList(1, 5)) {
            String[] cells = line.split(",");
            ReadingGrade read = ReadingGrade.of(cells[0]);
            assertThat(List.of(read.words(), read.sentences(), read.syllables()))
                    .as(cells[0])
                    .containsExactly(Integer.valueOf(cells[1]), Integer.valueOf(cells[2]), Integer.valueOf(cells[3]));
            assertThat(read.grade()).as(cells[0]).isCloseTo(Double.parseDouble(cells[6]), within(0.01));
        }
    }
}
