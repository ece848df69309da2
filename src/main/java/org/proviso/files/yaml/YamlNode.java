package org.proviso.files.yaml;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.proviso.core.Code;
import org.proviso.files.InputException;
import org.proviso.files.csv.CellParser;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * One value of a YAML file: keys with values, a list, or a word. It knows its line and its key ({@code
 * orders[2].court}, lists counted from 1); every wrong kind of value is an {@link InputException} that says both.
 */
public final class YamlNode {

    private final String file;
    private final String key;
    private final Node node;

    YamlNode(String file, String key, Node node) {
        this.file = file;
        this.key = key;
        this.node = node;
    }

    /** The line the value starts in, counted from 1. */
    public int line() {
        return node.getStartMark().getLine() + 1;
    }

    /** The path of the value from the root; empty for the root. */
    public String key() {
        return key;
    }

    public boolean isMap() {
        return node instanceof MappingNode;
    }

    public boolean isList() {
        return node instanceof SequenceNode;
    }

    /** Nothing at all, {@code null}, or an empty text. */
    public boolean isEmpty() {
        return node instanceof ScalarNode scalar
                && (Tag.NULL.equals(node.getTag()) || scalar.getValue().isBlank());
    }

    /** The value of a key that must be there and not empty. */
    public YamlNode required(String name) {
        YamlNode value = child(name).orElseThrow(() -> missing(name));
        if (value.isEmpty()) {
            throw value.wrong("has no value");
        }
        return value;
    }

    /** The value of a key that may be left out or left empty. */
    public Optional<YamlNode> optional(String name) {
        return child(name).filter(value -> !value.isEmpty());
    }

    /** Refuses the first key that is none of these: a misspelled key must not be lost in silence. */
    public YamlNode rejectUnknownKeys(String... known) {
        for (NodeTuple entry : entries()) {
            String name = ((ScalarNode) entry.getKeyNode()).getValue();
            if (!List.of(known).contains(name)) {
                int line = entry.getKeyNode().getStartMark().getLine() + 1;
                String reason = "is not a known key here (" + String.join(", ", known) + ")";
                throw InputException.atKey(file, line, childKey(name), reason);
            }
        }
        return this;
    }

    /** The keys in the order written. */
    public List<String> keys() {
        return entries().stream()
                .map(entry -> ((ScalarNode) entry.getKeyNode()).getValue())
                .toList();
    }

    /** The values of a list, in order. */
    public List<YamlNode> items() {
        if (!(node instanceof SequenceNode list)) {
            throw wrong("must be a list");
        }
        List<YamlNode> items = new ArrayList<>();
        for (Node item : list.getValue()) {
            items.add(new YamlNode(file, key + "[" + (items.size() + 1) + "]", item));
        }
        return items;
    }

    /** The word or sentence, as written and without spaces around it. */
    public String text() {
        if (!(node instanceof ScalarNode scalar)) {
            throw wrong(
                    isMap() ? "must be a single value, not keys with values" : "must be a single value, not a list");
        }
        if (isEmpty()) {
            throw wrong("has no value");
        }
        return scalar.getValue().strip();
    }

    public LocalDate date() {
        return parsed(LocalDate::parse, "is not a date (write it as 2026-11-03)", 10);
    }

    /** A local date and time. */
    public LocalDateTime dateTime() {
        return parsed(LocalDateTime::parse, "is not a local date and time (write it as 2026-11-03T18:52)", 16);
    }

    /** A time of day, hours and minutes. */
    public LocalTime time() {
        return parsed(LocalTime::parse, "is not a time of day (write it as 19:00)", 5);
    }

    /** A whole number, not negative. */
    public int whole() {
        String text = text();
        if (!text.matches("[0-9]{1,9}")) {
            throw wrong(InputException.quoted(text) + " is not a whole number");
        }
        return Integer.parseInt(text);
    }

    /** True for {@code yes} or {@code true}, false for {@code no} or {@code false}. */
    public boolean yes() {
        return switch (text()) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw wrong(InputException.quoted(text()) + " is not yes or no");
        };
    }

    public <E extends Enum<E> & Code> E code(Class<E> type) {
        String text = text();
        return Code.find(type, text)
                .orElseThrow(() -> wrong(InputException.quoted(text) + " is not one of " + CellParser.allowed(type)));
    }

    /** The exception for what is wrong with this value. */
    public InputException wrong(String reason) {
        return InputException.atKey(file, line(), key, reason);
    }

    String childKey(String name) {
        return key.isEmpty() ? name : key + "." + name;
    }

    Node node() {
        return node;
    }

    private <T> T parsed(Function<String, T> parse, String reason, int length) {
        String text = text();
        try {
            if (text.length() == length) {
                return parse.apply(text);
            }
        } catch (DateTimeException e) {
            // Refused below with every other mistake.
        }
        throw wrong(InputException.quoted(text) + " " + reason);
    }

    private Optional<YamlNode> child(String name) {
        for (NodeTuple entry : entries()) {
            if (((ScalarNode) entry.getKeyNode()).getValue().equals(name)) {
                return Optional.of(new YamlNode(file, childKey(name), entry.getValueNode()));
            }
        }
        return Optional.empty();
    }

    private List<NodeTuple> entries() {
        if (!(node instanceof MappingNode mapping)) {
            throw wrong("must be keys with values");
        }
        return mapping.getValue();
    }

    private InputException missing(String name) {
        return InputException.atKey(file, line(), childKey(name), "is missing");
    }
}
