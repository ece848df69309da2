package org.proviso.cli;

import java.util.List;

/** Writes a small YAML document line by line; every text is quoted, so that none is read as something else. */
final class YamlWriter {

    private final StringBuilder text = new StringBuilder();

    YamlWriter key(String indent, String key, String value) {
        text.append(indent).append(key).append(": ").append(quoted(value)).append('\n');
        return this;
    }

    /** A key whose value is written as it is: a number, a word of a fixed list, yes or no. */
    YamlWriter plain(String indent, String key, String value) {
        text.append(indent).append(key).append(": ").append(value).append('\n');
        return this;
    }

    YamlWriter list(String indent, String key, List<String> values) {
        text.append(indent).append(key).append(':');
        if (values.isEmpty()) {
            text.append(" []\n");
            return this;
        }
        text.append('\n');
        values.forEach(value ->
                text.append(indent).append("  - ").append(quoted(value)).append('\n'));
        return this;
    }

    YamlWriter line(String line) {
        text.append(line).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private static String quoted(String value) {
        return "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }
}
