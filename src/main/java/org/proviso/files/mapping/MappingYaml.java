package org.proviso.files.mapping;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a mapping as {@link MappingReader} reads it, in one spelling: the same mapping gives the same bytes. */
public final class MappingYaml {

    private final StringBuilder text = new StringBuilder();

    private MappingYaml() {}

    public static String of(Mapping mapping) {
        MappingYaml yaml = new MappingYaml();
        yaml.line("mapping: " + quoted(mapping.name()));
        yaml.line("version: " + mapping.version());
        yaml.line("list: " + mapping.list().code());
        yaml.line("files: " + quoted(mapping.files()));
        yaml.source(mapping.source());
        if (!mapping.empty().isEmpty()) {
            yaml.line("empty: " + listed(mapping.empty()));
        }
        yaml.line("fields:");
        mapping.fields().forEach(yaml::field);
        return yaml.text.toString();
    }

    private void source(SourceForm source) {
        line("source:");
        line("  encoding: " + source.encoding().name());
        line("  delimiter: " + source.delimiter().code());
        line("  quoted: " + yesNo(source.quoted()));
        line("  header: " + yesNo(source.header()));
        if (source.delimiter() == Delimiter.FIXED_WIDTH) {
            line("  layout:");
            source.layout()
                    .forEach(at -> line(String.format(
                            Locale.ROOT, "    - {name: %s, from: %d, to: %d}", quoted(at.name()), at.from(), at.to())));
        } else {
            line("  columns:");
            source.columns().forEach(column -> line("    - " + quoted(column)));
        }
    }

    private void field(FieldSource source) {
        if (source.from().isEmpty()) {
            line("  " + source.field() + ": {value: " + quoted(source.value()) + "}");
            return;
        }
        String from = source.from().size() == 1 ? quoted(source.from().get(0)) : listed(source.from());
        line("  " + source.field() + ": {from: " + from + form(source.form()) + "}");
    }

    private static String form(CellForm form) {
        if (form instanceof CellForm.Dated dated) {
            String pivot =
                    dated.form().hasShortYear() ? ", pivot: " + dated.form().pivot() : "";
            return ", date: " + quoted(dated.form().form()) + pivot;
        }
        if (form instanceof CellForm.Coded coded) {
            return coded.words().entrySet().stream()
                    .map(code -> quoted(code.getKey()) + ": " + quoted(code.getValue()))
                    .collect(Collectors.joining(", ", ", codes: {", "}"));
        }
        return form instanceof CellForm.PartOf part ? ", split: " + part.shape().code() : "";
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static String listed(List<String> texts) {
        return texts.stream().map(MappingYaml::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String value) {
        return "\""
                + value.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                        .replace("\t", "\\t")
                + "\"";
    }
}
