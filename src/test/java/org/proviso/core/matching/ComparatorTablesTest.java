package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.proviso.core.matching.spelling.EditDistance;
import org.proviso.core.matching.spelling.JaroWinkler;
import org.proviso.core.matching.spelling.Soundex;

/**
 * Published values. Each row names its source: Winkler's table (Census Bureau RRS2006/02), public test tables of
 * general libraries, the Soundex rules of the National Archives.
 */
class ComparatorTablesTest {

    @TestFactory
    Stream<DynamicTest> jaro_and_jaro_winkler_give_the_published_values() throws IOException {
        return rows("jaro-winkler.csv", row -> {
            String a = row.get("a");
            String b = row.get("b");
            double actual = row.get("measure").equals("jaro") ? JaroWinkler.jaro(a, b) : JaroWinkler.similarity(a, b);
            assertThat(actual)
                    .isCloseTo(
                            Double.parseDouble(row.get("expected")), within(Double.parseDouble(row.get("tolerance"))));
        });
    }

    /**
     * The program's own measure lies between two others: Levenshtein's counts an exchange as two slips, and
     * Damerau-Levenshtein's also takes for one an exchange with other slips between.
     */
    @TestFactory
    Stream<DynamicTest> edit_distances_lie_where_the_published_values_put_them() throws IOException {
        return rows("edit-distance.csv", row -> {
            String a = row.get("a");
            String b = row.get("b");
            int published = Integer.parseInt(row.get("expected"));
            var distance = assertThat(EditDistance.optimalStringAlignment(a, b));
            switch (row.get("measure")) {
                case "levenshtein" -> distance.isLessThanOrEqualTo(published);
                case "damerau_levenshtein" -> distance.isGreaterThanOrEqualTo(published);
                case "optimal_string_alignment" -> distance.isEqualTo(published);
                default -> throw new IllegalStateException("no such measure: " + row.get("measure"));
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> soundex_gives_the_published_codes() throws IOException {
        return rows("soundex.csv", row -> {
            assertThat(SoundexCode.of(row.get("name"))).isEqualTo(row.get("expected"));
            assertThat(Soundex.number(row.get("name"))).isEqualTo(SoundexCode.number(row.get("expected")));
        });
    }

    private interface RowCheck {
        void check(Map<String, String> row);
    }

    private static Stream<DynamicTest> rows(String file, RowCheck check) throws IOException {
        return ReferenceRows.of("data/strings/" + file).stream()
                .map(row -> dynamicTest(row.values().toString(), () -> check.check(row)));
    }
}
