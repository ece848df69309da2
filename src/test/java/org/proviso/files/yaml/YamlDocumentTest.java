package org.proviso.files.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.RollStatus;

class YamlDocumentTest {

    @Test
    void knows_lines_and_keys() {
        YamlNode root = read("a: 1\nb:\n  - c: x\n  - c: y\n");

        YamlNode second = root.required("b").items().get(1).required("c");
        assertThat(second.text()).isEqualTo("y");
        assertThat(second.line()).isEqualTo(4);
        assertThat(second.key()).isEqualTo("b[2].c");
        assertThat(root.keys()).containsExactly("a", "b");
        assertThat(root.optional("d")).isEmpty();
    }

    @Test
    void reads_values_as_written_whatever_yaml_would_make_of_them() {
        YamlNode root = read("t: 19:00\nd: 2026-11-03\nn: 007\ny: no\nz: 'yes'\ns: pending\nat: 2026-11-03T18:52\n");

        assertThat(root.required("t").time()).isEqualTo(LocalTime.of(19, 0));
        assertThat(root.required("d").date()).isEqualTo(LocalDate.of(2026, 11, 3));
        assertThat(root.required("n").text()).isEqualTo("007");
        assertThat(root.required("n").whole()).isEqualTo(7);
        assertThat(root.required("y").yes()).isFalse();
        assertThat(root.required("z").yes()).isTrue();
        assertThat(root.required("s").code(RollStatus.class)).isEqualTo(RollStatus.PENDING);
        assertThat(root.required("at").dateTime()).isEqualTo(LocalDateTime.of(2026, 11, 3, 18, 52));
    }

    @Test
    void takes_an_empty_value_as_left_out() {
        assertThat(read("a:\nb: ~\nc: ''\n").optional("a")).isEmpty();
        assertThat(read("a:\nb: ~\nc: ''\n").optional("b")).isEmpty();
        assertThat(read("a:\nb: ~\nc: ''\n").optional("c")).isEmpty();
        fails("x: 1\na:\n", root -> root.required("a"), 2, "a", "has no value");
    }

    @Test
    void refuses_what_is_not_there_or_not_known() {
        fails("o:\n  a: 1\n", root -> root.required("o").required("b"), 2, "o.b", "is missing");
        fails("a: 1\nzz: 2\n", root -> root.rejectUnknownKeys("a", "b"), 2, "zz", "is not a known key here (a, b)");
    }

    @Test
    void refuses_the_wrong_kind_of_value() {
        fails("a: [1]\n", root -> root.required("a").text(), 1, "a", "must be a single value, not a list");
        fails("a: {b: 1}\n", root -> root.required("a").text(), 1, "a", "must be a single value, not keys with values");
        fails("a: 1\n", root -> root.required("a").items(), 1, "a", "must be a list");
        fails("a: 1\n", root -> root.required("a").keys(), 1, "a", "must be keys with values");
        fails("a: 2026-02-30\n", root -> root.required("a").date(), 1, "a", "\"2026-02-30\" is not a date");
        fails("a: 2026-11-03\n", root -> root.required("a").dateTime(), 1, "a", "is not a local date and time");
        fails("a: 7pm\n", root -> root.required("a").time(), 1, "a", "\"7pm\" is not a time of day");
        fails("a: -1\n", root -> root.required("a").whole(), 1, "a", "\"-1\" is not a whole number");
        fails("a: maybe\n", root -> root.required("a").yes(), 1, "a", "\"maybe\" is not yes or no");
        fails(
                "a: activ\n",
                root -> root.required("a").code(RollStatus.class),
                1,
                "a",
                "is not one of active, inactive");
    }

    @Test
    void refuses_a_file_that_is_not_plain_keys_and_values() {
        fails("", root -> root, 0, "", "is empty");
        fails("- a\n", root -> root, 1, "", "the file must contain keys with values");
        fails("a: 1\nb: [\n", root -> root, 3, "", "is not YAML");
        fails("a: 1\n---\nb: 2\n", root -> root, 2, "", "is not YAML");
        fails("a: 1\nb: 2\na: 3\n", root -> root, 3, "a", "appears twice, in lines 1 and 3");
        fails("o:\n  a: 1\n  a: 3\n", root -> root, 3, "o.a", "appears twice, in lines 2 and 3");
        fails("[a]: 1\n", root -> root, 1, "", "contains a key that is not a word");
    }

    @Test
    void refuses_aliases_and_objects() {
        fails("a: 1\nb: &x [1]\nc: *x\n", root -> root, 2, "b", "anchors and aliases");
        fails("a: !!java.net.URL [x]\n", root -> root, 1, "", "Global tag is not allowed");
        fails("a: !thing x\n", root -> root, 1, "a", "tags (!) are not allowed");
    }

    @Test
    void refuses_a_file_too_long_or_too_deep() {
        fails("a: " + "x".repeat(3_000_001) + "\n", root -> root, 0, "", "exceeds the limit");
        fails("a: " + "[".repeat(200) + "]".repeat(200) + "\n", root -> root, 0, "", "is not YAML");
    }

    @Test
    void refuses_a_file_that_is_not_utf_8(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("t.yaml"), "a: 1\nb: \u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        refused(() -> YamlDocument.read(file), "t.yaml", 2, "", "contains the byte E9");
        refused(() -> YamlDocument.read(folder.resolve("no.yaml")), "no.yaml", 0, "", "is missing from");
    }

    private static YamlNode read(String text) {
        return YamlDocument.read("t.yaml", new StringReader(text));
    }

    private static void fails(String text, Function<YamlNode, Object> reading, int line, String key, String reason) {
        refused(() -> reading.apply(read(text)), "t.yaml", line, key, reason);
    }
}
