package org.proviso.files.yaml;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.proviso.files.InputException;
import org.proviso.files.csv.Utf8Reader;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Reads one YAML file into nodes that know their lines, and makes no objects from it. Anchors, aliases, tags, doubled
 * keys, a second document and files above three million characters are refused.
 */
public final class YamlDocument {

    private static final int LONGEST = 3_000_000;
    private static final int DEEPEST = 30;

    private final String file;

    private YamlDocument(String file) {
        this.file = file;
    }

    /** The root of the file, which must be a mapping. */
    public static YamlNode read(Path path) {
        String file = path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new InputException(
                    file, 0, "", "is missing from " + path.toAbsolutePath().getParent());
        }
        try (Reader reader = new Utf8Reader(path)) {
            return read(file, reader);
        } catch (IOException e) {
            throw new InputException(file, 0, "", "cannot be read: " + e);
        }
    }

    /** The root of a text under the name that errors are to give it. */
    public static YamlNode read(String file, Reader text) {
        return new YamlDocument(file).root(text);
    }

    private YamlNode root(Reader text) {
        Node node = compose(text);
        if (node == null) {
            throw new InputException(file, 0, "", "is empty");
        }
        check(node, "");
        YamlNode root = new YamlNode(file, "", node);
        if (!root.isMap()) {
            throw root.wrong("the file must contain keys with values");
        }
        return root;
    }

    private Node compose(Reader text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(LONGEST);
        options.setNestingDepthLimit(DEEPEST);
        try {
            return new Yaml(new SafeConstructor(options)).compose(text);
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
            throw new InputException(file, line, "", "is not YAML: " + oneLine(e.getProblem()));
        } catch (YAMLException e) {
            throw new InputException(file, 0, "", "is not YAML: " + oneLine(String.valueOf(e.getMessage())));
        }
    }

    private void check(Node node, String key) {
        YamlNode here = new YamlNode(file, key, node);
        if (node.getAnchor() != null) {
            throw here.wrong("anchors and aliases (& and *) are not allowed in this file");
        }
        if (!node.getTag().getValue().startsWith("tag:yaml.org,2002:")
                || node.getTag().getValue().contains("java")) {
            throw here.wrong("tags (!) are not allowed in this file");
        }
        if (node instanceof MappingNode mapping) {
            checkKeys(mapping, here);
        } else if (node instanceof SequenceNode) {
            here.items().forEach(item -> check(item.node(), item.key()));
        }
    }

    private void checkKeys(MappingNode mapping, YamlNode here) {
        Map<String, Integer> lines = new HashMap<>();
        for (NodeTuple entry : mapping.getValue()) {
            int line = entry.getKeyNode().getStartMark().getLine() + 1;
            if (!(entry.getKeyNode() instanceof ScalarNode name)) {
                throw InputException.atKey(file, line, here.key(), "contains a key that is not a word");
            }
            Integer first = lines.putIfAbsent(name.getValue(), line);
            String key = here.childKey(name.getValue());
            if (first != null) {
                throw InputException.atKey(file, line, key, "appears twice, in lines " + first + " and " + line);
            }
            check(entry.getValueNode(), key);
        }
    }

    private static String oneLine(String message) {
        return message.replaceAll("\\s+", " ");
    }
}
