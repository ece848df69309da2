package org.proviso.files.mapping;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Makes a row in our columns of an office's row. What does not fit is written as it came, for the reader behind to name,
 * and counted here.
 */
final class RowConverter {

    private static final int DATE_LENGTH = 10;

    private final List<Cell> cells = new ArrayList<>();
    private final Set<String> empty;
    private final Misfits misfits;

    RowConverter(Mapping mapping, SourceHeader header, Misfits misfits) {
        this.misfits = misfits;
        this.empty = new HashSet<>(mapping.empty());
        for (OurField field : OurFields.of(mapping.list())) {
            FieldSource source = mapping.source(field.name()).orElse(null);
            int[] places = source == null
                    ? new int[0]
                    : source.from().stream().mapToInt(header::place).toArray();
            cells.add(new Cell(field, source, places, tellsOfSplit(mapping, field, source)));
        }
    }

    /** Of a text that cannot be split one column tells: the one that holds it, or the first that would have a part. */
    private static boolean tellsOfSplit(Mapping mapping, OurField field, @Nullable FieldSource source) {
        if (source == null || !(source.form() instanceof CellForm.PartOf part)) {
            return false;
        }
        return mapping.fields().stream()
                .filter(other ->
                        other.from().equals(source.from()) && other.form().equals(part))
                .map(FieldSource::field)
                .reduce((one, two) -> two.equals(part.shape().wholeIn()) ? two : one)
                .equals(Optional.of(field.name()));
    }

    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    private record Cell(OurField field, @Nullable FieldSource source, int[] places, boolean tellsOfSplit) {

        String column() {
            return source == null ? "" : String.join(" + ", source.from());
        }
    }

    List<String> convert(SourceRows.Row row) {
        List<String> converted = new ArrayList<>(cells.size());
        for (Cell cell : cells) {
            converted.add(cell.source() == null ? "" : convert(cell, cell.source(), row));
        }
        return converted;
    }

    private String convert(Cell cell, FieldSource source, SourceRows.Row row) {
        String value = source.from().isEmpty() ? source.value() : joined(cell, row);
        if (value.isEmpty()) {
            if (cell.field().needed()) {
                misfits.add(cell.field().name(), cell.column(), value, row.line(), true);
            }
            return value;
        }
        if (source.form() instanceof CellForm.PartOf part) {
            return part(cell, part.shape(), value, row);
        }
        Optional<String> converted = formed(cell.field(), source.form(), value);
        if (converted.isEmpty()) {
            boolean fits = fits(cell.field(), value);
            boolean isUnknownCode =
                    source.form() instanceof CellForm.Coded && !cell.field().isCoded();
            if (!fits || isUnknownCode) {
                misfits.add(cell.field().name(), cell.column(), value, row.line(), !fits);
            }
        }
        return converted.orElse(value);
    }

    private String joined(Cell cell, SourceRows.Row row) {
        if (cell.places().length == 1) {
            return cell(row, cell.places()[0]);
        }
        StringBuilder joined = new StringBuilder();
        for (int place : cell.places()) {
            String text = cell(row, place);
            if (!text.isEmpty()) {
                joined.append(joined.isEmpty() ? "" : " ").append(text);
            }
        }
        return joined.toString();
    }

    private String cell(SourceRows.Row row, int place) {
        String text = place < row.cells().size() ? row.cells().get(place) : "";
        return empty.contains(text) ? "" : text;
    }

    private String part(Cell cell, TextShape shape, String value, SourceRows.Row row) {
        var parts = shape.split(value);
        if (parts.isPresent()) {
            return parts.get().getOrDefault(cell.field().name(), "");
        }
        if (cell.tellsOfSplit()) {
            misfits.add(cell.field().name(), cell.column(), value, row.line(), false);
        }
        return cell.field().name().equals(shape.wholeIn()) ? value : "";
    }

    private static Optional<String> formed(OurField field, CellForm form, String value) {
        if (form instanceof CellForm.Dated dated) {
            return field.kind() == OurField.Kind.MOMENT
                    ? dated.form().moment(value)
                    : dated.form().date(value);
        }
        return form instanceof CellForm.Coded coded
                ? Optional.ofNullable(coded.words().get(value))
                : Optional.empty();
    }

    /** Whether the reader behind takes the value as it stands. */
    private static boolean fits(OurField field, String value) {
        return switch (field.kind()) {
            case TEXT, KEY -> true;
            case CODE, YES_NO -> field.words().contains(value);
            case WHOLE -> value.length() <= 9 && value.chars().allMatch(c -> c >= '0' && c <= '9');
            case DATE -> isIso(value, true);
            case MOMENT -> isIso(value, false);
        };
    }

    private static boolean isIso(String value, boolean date) {
        try {
            Object unused = date ? LocalDate.parse(value) : LocalDateTime.parse(value);
            return date == (value.length() == DATE_LENGTH);
        } catch (DateTimeException e) {
            return false;
        }
    }
}
