package org.proviso.files.mapping;

import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.PatternSyntaxException;
import org.proviso.files.InputException;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/** Reads a mapping. A field, column or form that is not known is refused with its line. */
public final class MappingReader {

    private static final int LATEST_PIVOT = 2000;

    private MappingReader() {}

    public static Mapping read(Path file) {
        return mapping(YamlDocument.read(file)).complete(file.getFileName().toString());
    }

    /** A mapping from its text; the name is the one that errors are to give. */
    public static Mapping read(String file, String text) {
        return mapping(YamlDocument.read(file, new StringReader(text))).complete(file);
    }

    private static Mapping mapping(YamlNode root) {
        root.rejectUnknownKeys("mapping", "version", "list", "files", "source", "empty", "fields");
        ListKind list = root.required("list").code(ListKind.class);
        SourceForm source = source(root.required("source"));
        List<FieldSource> fields = new ArrayList<>();
        YamlNode named = root.required("fields");
        for (String name : named.keys()) {
            fields.add(field(list, source, name, named.required(name)));
        }
        return new Mapping(
                root.required("mapping").text(),
                root.required("version").whole(),
                list,
                files(root.required("files")),
                source,
                root.optional("empty").map(MappingReader::texts).orElse(List.of()),
                fields);
    }

    private static String files(YamlNode node) {
        try {
            Object unused = FileSystems.getDefault().getPathMatcher("glob:" + node.text());
            return node.text();
        } catch (PatternSyntaxException e) {
            throw node.wrong(InputException.quoted(node.text()) + " is not a file name (* stands for any signs)");
        }
    }

    private static SourceForm source(YamlNode node) {
        node.rejectUnknownKeys("encoding", "delimiter", "quoted", "header", "columns", "layout");
        Delimiter delimiter = node.required("delimiter").code(Delimiter.class);
        List<FixedColumn> layout = new ArrayList<>();
        if (delimiter == Delimiter.FIXED_WIDTH) {
            node.required("layout").items().forEach(column -> layout.add(fixed(column)));
        }
        List<String> columns = delimiter == Delimiter.FIXED_WIDTH
                ? layout.stream().map(FixedColumn::name).toList()
                : texts(node.required("columns"));
        return new SourceForm(
                encoding(node.required("encoding")),
                delimiter,
                node.optional("quoted").map(YamlNode::yes).orElse(true),
                node.required("header").yes(),
                columns,
                layout);
    }

    private static FixedColumn fixed(YamlNode column) {
        column.rejectUnknownKeys("name", "from", "to");
        int from = column.required("from").whole();
        int to = column.required("to").whole();
        if (from < 1 || to < from) {
            throw column.wrong("a column lies from one character, counted from 1, to the same or a later one");
        }
        return new FixedColumn(column.required("name").text(), from, to);
    }

    private static Charset encoding(YamlNode node) {
        try {
            return Charset.forName(node.text());
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw node.wrong(InputException.quoted(node.text())
                    + " is not a known encoding (such as UTF-8, windows-1252, ISO-8859-1, UTF-16)");
        }
    }

    private static FieldSource field(ListKind list, SourceForm source, String name, YamlNode node) {
        OurField field = OurFields.find(list, name)
                .orElseThrow(() -> node.wrong("is not a column of " + list.file() + " ("
                        + String.join(
                                ", ",
                                OurFields.of(list).stream().map(OurField::name).toList()) + ")"));
        node.rejectUnknownKeys("from", "date", "pivot", "codes", "split", "value");
        Optional<YamlNode> value = node.optional("value");
        if (value.isPresent()) {
            return new FieldSource(
                    name, List.of(), CellForm.AS_WRITTEN, value.get().text());
        }
        YamlNode from = node.required("from");
        List<String> columns = from.isList() ? texts(from) : List.of(from.text());
        for (String column : columns) {
            if (!source.columns().contains(column)) {
                throw from.wrong(InputException.quoted(column) + " is not among the columns of the source");
            }
        }
        return new FieldSource(name, columns, form(field, node), "");
    }

    private static CellForm form(OurField field, YamlNode node) {
        Optional<YamlNode> date = node.optional("date");
        Optional<YamlNode> codes = node.optional("codes");
        Optional<YamlNode> split = node.optional("split");
        if (date.isPresent()) {
            return new CellForm.Dated(date(date.get(), node.optional("pivot")));
        }
        if (codes.isPresent()) {
            return new CellForm.Coded(codes(field, codes.get()));
        }
        if (split.isPresent()) {
            TextShape shape = split.get().code(TextShape.class);
            if (!shape.parts().contains(field.name())) {
                throw split.get().wrong("has no part " + field.name());
            }
            return new CellForm.PartOf(shape);
        }
        return CellForm.AS_WRITTEN;
    }

    private static DateForm date(YamlNode form, Optional<YamlNode> pivot) {
        DateForm date = DateForm.of(form.text(), pivot.map(YamlNode::whole).orElse(LATEST_PIVOT))
                .orElseThrow(() -> form.wrong(InputException.quoted(form.text()) + " is not a known form ("
                        + String.join("; ", DateForm.DATES) + "; with HH:MM behind it for a time)"));
        if (date.hasShortYear() && pivot.isEmpty()) {
            throw form.wrong("has two-digit years; give the first of their hundred years as pivot");
        }
        return date;
    }

    private static Map<String, String> codes(OurField field, YamlNode node) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String code : node.keys()) {
            YamlNode word = node.required(code);
            if (field.isCoded() && !field.words().contains(word.text())) {
                throw word.wrong(
                        InputException.quoted(word.text()) + " is not one of " + String.join(", ", field.words()));
            }
            words.put(code, word.text());
        }
        return words;
    }

    private static List<String> texts(YamlNode list) {
        return list.items().stream().map(YamlNode::text).toList();
    }
}
