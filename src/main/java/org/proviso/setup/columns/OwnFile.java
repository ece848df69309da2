package org.proviso.setup.columns;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.proviso.files.mapping.CellForm;
import org.proviso.files.mapping.ColumnProfile;
import org.proviso.files.mapping.Conversion;
import org.proviso.files.mapping.Converted;
import org.proviso.files.mapping.DateForm;
import org.proviso.files.mapping.FieldSource;
import org.proviso.files.mapping.FileRecognizer;
import org.proviso.files.mapping.FixedColumn;
import org.proviso.files.mapping.ListKind;
import org.proviso.files.mapping.Mapping;
import org.proviso.files.mapping.Misfit;
import org.proviso.files.mapping.OurField;
import org.proviso.files.mapping.OurFields;
import org.proviso.files.mapping.Preview;
import org.proviso.files.mapping.Proposal;
import org.proviso.files.mapping.Recognized;

/** An office's own file with what was recognized of it, and the mapping as it is proposed or was corrected. */
final class OwnFile {

    /** So many rows are shown as they will be read. */
    static final int SHOWN = 10;

    private final Path path;
    private final Recognized recognized;
    private Mapping mapping;

    private OwnFile(Path path, Recognized recognized, Mapping mapping) {
        this.path = path;
        this.recognized = recognized;
        this.mapping = mapping;
    }

    /** With the mapping that is proposed; {@code year} is that of the file, for years of two digits. */
    static OwnFile proposed(Path path, ListKind list, int year) {
        return proposed(path, List.of(), list, year);
    }

    /** The same of a file in fixed width, whose layout says where each column lies. */
    static OwnFile proposed(Path path, List<FixedColumn> layout, ListKind list, int year) {
        Recognized recognized =
                layout.isEmpty() ? FileRecognizer.recognize(path, year) : FileRecognizer.recognize(path, layout, year);
        return new OwnFile(
                path, recognized, Proposal.of(list, path.getFileName().toString(), recognized));
    }

    /** With a mapping that the office has. */
    static OwnFile read(Path path, Mapping mapping, int year) {
        return new OwnFile(path, FileRecognizer.recognize(path, mapping.source(), year), mapping);
    }

    Recognized recognized() {
        return recognized;
    }

    Mapping mapping() {
        return mapping;
    }

    Preview preview() {
        return Conversion.preview(path, mapping, SHOWN);
    }

    Converted convert(Path target) {
        return Conversion.write(path, mapping, target);
    }

    void named(String name, int version) {
        mapping = mapping.named(name, version);
    }

    /** Fills one of our columns from this column of the file; an empty name leaves it empty. */
    void choose(OurField field, String column) {
        Optional<ColumnProfile> profile = profile(column);
        change(field.name(), was -> profile.map(one -> Proposal.source(field, List.of(one))));
    }

    /** Reads the dates of one of our columns in this form. */
    void choose(String field, DateForm form) {
        change(field, was -> was.map(source -> with(source, new CellForm.Dated(form))));
    }

    /** Reads a code of the office's as this word of ours. */
    void choose(String field, String code, String word) {
        change(field, was -> was.map(source -> with(source, with(source.form(), code, word))));
    }

    private static CellForm with(CellForm form, String code, String word) {
        Map<String, String> words =
                new LinkedHashMap<>(form instanceof CellForm.Coded coded ? coded.words() : Map.of());
        words.put(code, word);
        return new CellForm.Coded(words);
    }

    private static FieldSource with(FieldSource source, CellForm form) {
        return new FieldSource(source.field(), source.from(), form, source.value());
    }

    /** The forms that nearly all dates of the column have, beside the one that is taken. */
    List<DateForm> dateForms(FieldSource source) {
        return source.from().size() == 1
                ? profile(source.from().get(0)).map(ColumnProfile::dateForms).orElse(List.of())
                : List.of();
    }

    private Optional<ColumnProfile> profile(String column) {
        return recognized.columns().stream()
                .filter(profile -> profile.name().equals(column))
                .findFirst();
    }

    /** Codes that nobody has given a word of ours yet. */
    static List<Misfit> unknownCodes(Mapping mapping, Preview preview) {
        return preview.misfits().stream()
                .filter(misfit -> !misfit.value().isEmpty())
                .filter(misfit -> OurFields.find(mapping.list(), misfit.field())
                        .filter(OurField::isCoded)
                        .isPresent())
                .toList();
    }

    private void change(String field, UnaryOperator<Optional<FieldSource>> how) {
        List<FieldSource> fields = new ArrayList<>();
        for (OurField one : OurFields.of(mapping.list())) {
            Optional<FieldSource> was = mapping.source(one.name());
            (one.name().equals(field) ? how.apply(was) : was).ifPresent(fields::add);
        }
        mapping = new Mapping(
                mapping.name(),
                mapping.version(),
                mapping.list(),
                mapping.files(),
                mapping.source(),
                mapping.empty(),
                fields);
    }
}
