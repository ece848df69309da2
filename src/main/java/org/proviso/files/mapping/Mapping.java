package org.proviso.files.mapping;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.proviso.files.InputException;

/**
 * How an office's own export becomes one of our lists: its name and version, the list, the file names it is for ({@code
 * VOTERS_*.txt}), how the file is written, the texts that mean nothing is there, and the source of each of our columns. A
 * column without a source is empty in every row.
 */
public record Mapping(
        String name,
        int version,
        ListKind list,
        String files,
        SourceForm source,
        List<String> empty,
        List<FieldSource> fields) {

    public Mapping {
        empty = List.copyOf(empty);
        fields = List.copyOf(fields);
    }

    /** Whether the mapping is for files of this name. */
    public boolean isFor(Path file) {
        return FileSystems.getDefault().getPathMatcher("glob:" + files).matches(file.getFileName());
    }

    public Optional<FieldSource> source(String field) {
        return fields.stream().filter(source -> source.field().equals(field)).findFirst();
    }

    public Mapping named(String newName, int newVersion) {
        return new Mapping(newName, newVersion, list, files, source, empty, fields);
    }

    /** Our columns without which every row would be refused and that have no source. */
    public List<String> missing() {
        return OurFields.of(list).stream()
                .filter(OurField::needed)
                .map(OurField::name)
                .filter(name -> source(name).isEmpty())
                .toList();
    }

    /** Refuses a mapping that could fill no row. */
    Mapping complete(String file) {
        if (!missing().isEmpty()) {
            throw new InputException(
                    file, 0, "", "says no column for " + String.join(", ", missing()) + "; every row needs it");
        }
        return this;
    }
}
