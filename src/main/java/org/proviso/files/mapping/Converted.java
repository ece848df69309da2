package org.proviso.files.mapping;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.files.InputException;

/** A file in our columns that was made of an office's own, and the way back from its lines and columns to the office's. */
public final class Converted {

    private static final Pattern LINE = Pattern.compile("\\blines? \\d+( and \\d+)?");
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final String source;
    private final Path file;
    private final Mapping mapping;
    private final long rows;
    private final SourceLines lines;
    private final Map<Integer, Integer> wrongWidths;
    private final int width;
    private final List<String> newColumns;
    private final List<Misfit> misfits;

    Converted(
            String source,
            Path file,
            Mapping mapping,
            long rows,
            SourceLines lines,
            Map<Integer, Integer> wrongWidths,
            int width,
            List<String> newColumns,
            List<Misfit> misfits) {
        this.source = source;
        this.file = file;
        this.mapping = mapping;
        this.rows = rows;
        this.lines = lines;
        this.wrongWidths = wrongWidths;
        this.width = width;
        this.newColumns = newColumns;
        this.misfits = misfits;
    }

    /** The file in our columns. */
    public Path file() {
        return file;
    }

    public long rows() {
        return rows;
    }

    /** What was read otherwise than the mapping says and no reader refuses, a sentence each. */
    public List<String> warnings() {
        Stream<String> ofColumns = newColumns.isEmpty()
                ? Stream.empty()
                : Stream.of(source + ": the mapping does not know the columns " + String.join(", ", newColumns)
                        + "; they were not read");
        Stream<String> ofTexts = misfits.stream()
                .filter(misfit -> !misfit.refused())
                .map(misfit -> source + " line " + misfit.firstLine() + ", column " + misfit.column() + ": "
                        + InputException.quoted(misfit.value()) + " does not fit and was read as it came as "
                        + misfit.field() + " (" + misfit.count() + (misfit.count() == 1 ? " row)" : " rows)"));
        return Stream.concat(ofColumns, ofTexts).toList();
    }

    /** What is wrong with the converted file, told with the office's file, line and column. */
    public InputException told(InputException wrong) {
        List<InputException> told = wrong.all().stream().map(this::one).toList();
        return InputException.ofAll(told.get(0), told.subList(1, told.size()), wrong.untold());
    }

    private InputException one(InputException wrong) {
        if (!wrong.file().equals(file.getFileName().toString())) {
            return wrong;
        }
        int line = lines.at(wrong.line());
        Integer cells = wrongWidths.get(line);
        if (cells != null) {
            return new InputException(
                    source,
                    line,
                    "",
                    "has " + cells + (cells == 1 ? " field" : " fields") + " but the header has " + width);
        }
        String columns = Arrays.stream(wrong.column().split(" \\+ ", -1))
                .map(this::column)
                .distinct()
                .collect(Collectors.joining(" + "));
        boolean sameName = columns.equals(wrong.column());
        return new InputException(
                source, line, columns, reason(wrong.reason()) + (sameName ? "" : readAs(wrong.column())));
    }

    private String column(String field) {
        return mapping.source(field)
                .filter(from -> !from.from().isEmpty())
                .map(from -> String.join(" + ", from.from()))
                .orElse(field);
    }

    private String readAs(String field) {
        String form = mapping.source(field)
                .map(FieldSource::form)
                .map(how -> how instanceof CellForm.Dated dated
                        ? " from " + dated.form().form()
                        : "")
                .orElse("");
        return " (read as " + field + form + ")";
    }

    /** A reason may name lines too, of the converted file. */
    private String reason(String reason) {
        return lines.areTheSame()
                ? reason
                : LINE.matcher(reason)
                        .replaceAll(named -> Matcher.quoteReplacement(NUMBER.matcher(named.group())
                                .replaceAll(number -> String.valueOf(lines.at(Integer.parseInt(number.group()))))));
    }
}
