package org.proviso.files.mapping;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/** Our columns of every list, from the table that lies beside this class. */
public final class OurFields {

    private static final Map<ListKind, List<OurField>> ALL = read();

    private OurFields() {}

    /** The columns in the order of the file. */
    public static List<OurField> of(ListKind list) {
        return Objects.requireNonNull(ALL.get(list), "every list has its columns");
    }

    public static Optional<OurField> find(ListKind list, String name) {
        return of(list).stream().filter(field -> field.name().equals(name)).findFirst();
    }

    private static Map<ListKind, List<OurField>> read() {
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(OurFields.class.getResourceAsStream("lists.yaml"), "lies beside this class"),
                StandardCharsets.UTF_8)) {
            YamlNode root = YamlDocument.read("lists.yaml", text);
            Map<ListKind, List<OurField>> all = new EnumMap<>(ListKind.class);
            for (ListKind list : ListKind.values()) {
                all.put(list, fields(root.required(list.code())));
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<OurField> fields(YamlNode list) {
        List<OurField> fields = new ArrayList<>();
        for (String name : list.keys()) {
            YamlNode field = list.required(name).rejectUnknownKeys("kind", "needed", "names", "codes");
            fields.add(new OurField(
                    name,
                    field.required("kind").code(OurField.Kind.class),
                    field.optional("needed").map(YamlNode::yes).orElse(false),
                    texts(field.required("names")),
                    field.optional("codes").map(OurFields::codes).orElse(Map.of())));
        }
        return List.copyOf(fields);
    }

    private static Map<String, List<String>> codes(YamlNode codes) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        codes.keys().forEach(word -> words.put(word, texts(codes.required(word))));
        return words;
    }

    private static List<String> texts(YamlNode list) {
        return list.items().stream().map(YamlNode::text).toList();
    }
}
