package org.proviso.files.mapping;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.proviso.files.InputException;

/**
 * Recognizes an office's file: encoding (by a library), what stands between cells, quotes, header and what each column
 * holds. All of the file is read, and no more of it kept than a person can look at.
 */
public final class FileRecognizer {

    private static final int LOOKED_AT = 200;
    private static final int SHOWN = 10;

    /** Two-digit years end with the year after this one. */
    private static final int YEARS_BACK = 98;

    private static final Set<String> KNOWN_NAMES = knownNames();

    private final Path file;
    private final int pivot;

    private FileRecognizer(Path file, int year) {
        this.file = file;
        this.pivot = year - YEARS_BACK;
    }

    /** A delimited file. {@code year} is this year: it says which century two-digit years are of. */
    public static Recognized recognize(Path file, int year) {
        EncodingFinder.Found found = EncodingFinder.find(file);
        FileRecognizer recognizer = new FileRecognizer(file, year);
        SourceForm bare = recognizer.delimited(found);
        return recognizer.profiled(recognizer.withHeader(bare), found.sure());
    }

    /** A fixed-width file, with its layout. */
    public static Recognized recognize(Path file, List<FixedColumn> layout, int year) {
        EncodingFinder.Found found = EncodingFinder.find(file);
        FileRecognizer recognizer = new FileRecognizer(file, year);
        SourceForm bare = new SourceForm(found.encoding(), Delimiter.FIXED_WIDTH, false, false, names(layout), layout);
        boolean header = isHeader(recognizer.rows(bare));
        return recognizer.profiled(bare.with(header, names(layout)), found.sure());
    }

    /** The same file where a person says how it is written; its columns are named anew. */
    public static Recognized recognize(Path file, SourceForm said, int year) {
        FileRecognizer recognizer = new FileRecognizer(file, year);
        if (said.delimiter() == Delimiter.FIXED_WIDTH) {
            return recognizer.profiled(said, true);
        }
        return recognizer.profiled(recognizer.named(said, said.header(), recognizer.rows(said)), true);
    }

    private static List<String> names(List<FixedColumn> layout) {
        return layout.stream().map(FixedColumn::name).toList();
    }

    /** The delimiter that makes most columns of nearly all rows; quotes are quotes wherever that can be read. */
    private SourceForm delimited(EncodingFinder.Found found) {
        SourceForm best = new SourceForm(found.encoding(), Delimiter.COMMA, true, true, List.of(), List.of());
        int most = 1;
        for (Delimiter delimiter : Delimiter.values()) {
            for (boolean quoted : List.of(true, false)) {
                SourceForm form = new SourceForm(found.encoding(), delimiter, quoted, true, List.of(), List.of());
                int width = delimiter == Delimiter.FIXED_WIDTH ? 0 : width(form);
                if (width > most) {
                    most = width;
                    best = form;
                }
            }
        }
        return best;
    }

    /** How many cells nearly all of the first rows have; 0 where rows differ or cannot be read so. */
    private int width(SourceForm form) {
        Map<Integer, Integer> widths = new HashMap<>();
        List<SourceRows.Row> rows;
        try {
            rows = rows(form);
        } catch (InputException notSo) {
            return 0;
        }
        rows.forEach(row -> widths.merge(row.cells().size(), 1, Integer::sum));
        return widths.entrySet().stream()
                .filter(width -> width.getValue() >= 0.9 * rows.size())
                .mapToInt(Map.Entry::getKey)
                .findFirst()
                .orElse(0);
    }

    private SourceForm withHeader(SourceForm form) {
        List<SourceRows.Row> rows = rows(form);
        return named(form, isHeader(rows), rows);
    }

    private SourceForm named(SourceForm form, boolean header, List<SourceRows.Row> rows) {
        if (rows.isEmpty()) {
            throw new InputException(file.getFileName().toString(), 0, "", "is empty");
        }
        List<String> cells = rows.get(0).cells();
        return form.with(header, SourceHeader.unique(header ? cells : Collections.nCopies(cells.size(), "")));
    }

    /** A first row names columns where it has a name that offices use, or words above numbers; never with a number. */
    private static boolean isHeader(List<SourceRows.Row> rows) {
        if (rows.isEmpty() || rows.get(0).cells().stream().anyMatch(FileRecognizer::isNumber)) {
            return false;
        }
        List<String> first = rows.get(0).cells();
        if (first.stream().map(OurField::plain).anyMatch(KNOWN_NAMES::contains)) {
            return true;
        }
        List<SourceRows.Row> below = rows.subList(1, rows.size());
        return !below.isEmpty()
                && IntStream.range(0, first.size())
                        .anyMatch(place -> below.stream()
                                .allMatch(row -> place < row.cells().size()
                                        && isNumber(row.cells().get(place))));
    }

    private static boolean isNumber(String cell) {
        return cell.matches("[A-Za-z]?[\\d/.:-]*\\d[\\d/.: -]*");
    }

    private List<SourceRows.Row> rows(SourceForm form) {
        List<SourceRows.Row> rows = new ArrayList<>();
        try (SourceRows all = new SourceRows(file, form)) {
            for (SourceRows.Row row = all.next(); row != null && rows.size() < LOOKED_AT; row = all.next()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private Recognized profiled(SourceForm form, boolean sure) {
        List<ProfileBuilder> profiles = new ArrayList<>();
        form.columns().forEach(name -> profiles.add(new ProfileBuilder(name)));
        List<List<String>> shown = new ArrayList<>();
        long count = 0;
        try (SourceRows all = new SourceRows(file, form)) {
            SourceRows.Row row = all.next();
            if (row == null) {
                throw new InputException(file.getFileName().toString(), 0, "", "is empty");
            }
            for (row = form.header() ? all.next() : row; row != null; row = all.next()) {
                count++;
                if (shown.size() < SHOWN) {
                    shown.add(row.cells());
                }
                for (int i = 0; i < Math.min(profiles.size(), row.cells().size()); i++) {
                    profiles.get(i).add(row.cells().get(i));
                }
            }
        }
        List<DateForm> dates = DateForm.all(pivot);
        return new Recognized(
                form,
                sure,
                shown,
                count,
                profiles.stream().map(profile -> profile.built(dates)).toList());
    }

    private static Set<String> knownNames() {
        Set<String> names = new HashSet<>();
        for (ListKind list : ListKind.values()) {
            OurFields.of(list).forEach(field -> field.names().forEach(name -> names.add(OurField.plain(name))));
        }
        return names;
    }
}
