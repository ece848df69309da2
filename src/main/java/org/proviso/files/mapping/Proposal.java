package org.proviso.files.mapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Proposes which of an office's columns are which of ours: by their names, then, for what no name settles, by what stands
 * in them. A person corrects it.
 */
public final class Proposal {

    private static final List<String> BEFORE_STREET =
            List.of("predir", "pre direction", "street direction", "street dir", "direction", "dir", "street prefix");
    private static final List<String> AFTER_STREET = List.of("street type", "type", "street suffix", "st type");
    private static final List<String> LAST_OF_STREET = List.of("post direction", "postdir", "street post direction");

    private final ListKind list;
    private final List<ColumnProfile> columns;
    private final Map<String, ColumnProfile> byField = new LinkedHashMap<>();
    private final Map<String, TextShape> shapes = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();

    private Proposal(ListKind list, List<ColumnProfile> columns) {
        this.list = list;
        this.columns = columns;
    }

    /** A mapping in its first version, named after the file, for files of such names. */
    public static Mapping of(ListKind list, String fileName, Recognized file) {
        Proposal proposal = new Proposal(list, file.columns());
        proposal.byName();
        proposal.byShape();
        proposal.byContent();
        proposal.byDates();
        List<String> empty = file.columns().stream()
                .flatMap(column -> Stream.concat(column.texts().stream(), column.values().keySet().stream()))
                .filter(ColumnProfile::meansNothing)
                .distinct()
                .toList();
        return new Mapping(name(list, fileName), 1, list, pattern(fileName), file.form(), empty, proposal.fields());
    }

    /** How one of our columns would be filled from these, where a person chose them. */
    public static FieldSource source(OurField field, List<ColumnProfile> from) {
        List<String> names = from.stream().map(ColumnProfile::name).toList();
        return new FieldSource(
                field.name(), names, from.size() == 1 ? form(field, from.get(0)) : CellForm.AS_WRITTEN, "");
    }

    private void byName() {
        record Named(OurField field, ColumnProfile column, int rank) {}
        List<Named> named = new ArrayList<>();
        for (OurField field : OurFields.of(list)) {
            for (ColumnProfile column : columns) {
                int rank = OurField.plain(field.name()).equals(OurField.plain(column.name()))
                        ? 0
                        : field.rankOf(column.name());
                if (rank >= 0) {
                    named.add(new Named(field, column, rank));
                }
            }
        }
        named.sort(Comparator.comparingInt(Named::rank));
        named.forEach(pair -> take(pair.field().name(), pair.column()));
    }

    private void take(String field, ColumnProfile column) {
        if (!byField.containsKey(field) && used.add(column.name())) {
            byField.put(field, column);
        }
    }

    /** A whole name, address line, or city with state and zip fills each of its parts that has no column of its own. */
    private void byShape() {
        List<TextShape> known = new ArrayList<>(List.of(TextShape.values()));
        known.remove(TextShape.FIRST_LAST);
        known.add(TextShape.FIRST_LAST);
        for (TextShape shape : known) {
            if (OurFields.find(list, shape.wholeIn()).isEmpty() || shapes.containsValue(twin(shape))) {
                continue;
            }
            List<String> parts = OurFields.of(list).stream()
                    .map(OurField::name)
                    .filter(shape.parts()::contains)
                    .toList();
            columns.stream()
                    .filter(column -> column.isOf(shape) && mayBeSplit(shape, parts, column))
                    .findFirst()
                    .ifPresent(column -> split(shape, parts, column));
        }
    }

    private static TextShape twin(TextShape shape) {
        return shape == TextShape.FIRST_LAST ? TextShape.LAST_FIRST : shape;
    }

    /** First and last name without a comma look like any two words: only a column named as a name is read so. */
    private boolean mayBeSplit(TextShape shape, List<String> parts, ColumnProfile column) {
        boolean named = parts.stream().anyMatch(part -> column.equals(byField.get(part)));
        boolean free = !used.contains(column.name()) && shape != TextShape.FIRST_LAST;
        long alone = parts.stream()
                .filter(part -> {
                    ColumnProfile own = byField.get(part);
                    return own != null && !own.equals(column);
                })
                .count();
        return (named || (free && !byField.containsKey(shape.wholeIn()))) && alone < parts.size() - 1;
    }

    private void split(TextShape shape, List<String> parts, ColumnProfile column) {
        used.add(column.name());
        for (String part : parts) {
            ColumnProfile own = byField.get(part);
            if (own == null || own.equals(column)) {
                byField.put(part, column);
                shapes.put(part, shape);
            }
        }
    }

    private void byContent() {
        for (OurField field : OurFields.of(list)) {
            if (field.isCoded() && field.needed()) {
                first(
                        field.name(),
                        column -> !column.values().isEmpty()
                                && column.values().keySet().stream()
                                        .allMatch(value -> ColumnProfile.meansNothing(value)
                                                || field.commonWord(value).isPresent()));
            } else if (field.name().equals("voter_id")) {
                first(field.name(), ColumnProfile::isNumbered);
            } else if (field.name().equals("zip")) {
                first(field.name(), column -> column.nearlyAll(text -> text.matches("\\d{5}(-?\\d{4})?")));
            }
        }
    }

    /** Of the dates without a known name the earliest is the birth, the others follow in our order. */
    private void byDates() {
        List<ColumnProfile> dates = columns.stream()
                .filter(column ->
                        !used.contains(column.name()) && column.dateForm().isPresent())
                .sorted(Comparator.comparingInt(ColumnProfile::middleYear))
                .toList();
        List<String> wanted = Stream.of("date_of_birth", "registration_date", "issued_on", "at", "state_on", "on")
                .filter(name -> OurFields.find(list, name).isPresent() && !byField.containsKey(name))
                .toList();
        for (int i = 0; i < Math.min(dates.size(), wanted.size()); i++) {
            take(wanted.get(i), dates.get(i));
        }
    }

    private void first(String field, Predicate<ColumnProfile> so) {
        columns.stream()
                .filter(column -> !used.contains(column.name()) && so.test(column))
                .findFirst()
                .ifPresent(column -> take(field, column));
    }

    private List<FieldSource> fields() {
        List<FieldSource> fields = new ArrayList<>();
        for (OurField field : OurFields.of(list)) {
            ColumnProfile column = byField.get(field.name());
            TextShape shape = shapes.get(field.name());
            if (column != null && shape != null) {
                fields.add(FieldSource.of(field.name(), column.name(), new CellForm.PartOf(shape)));
            } else if (column != null && field.name().equals("street")) {
                fields.add(source(field, street(column)));
            } else if (column != null) {
                fields.add(source(field, List.of(column)));
            }
        }
        return fields;
    }

    /** The pieces of a street's name in columns of their own, in the order in which it is written. */
    private List<ColumnProfile> street(ColumnProfile street) {
        return Stream.of(piece(BEFORE_STREET), Optional.of(street), piece(AFTER_STREET), piece(LAST_OF_STREET))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<ColumnProfile> piece(List<String> names) {
        return columns.stream()
                .filter(column -> !used.contains(column.name())
                        && names.stream().anyMatch(name -> OurField.plain(name).equals(OurField.plain(column.name()))))
                .findFirst();
    }

    private static CellForm form(OurField field, ColumnProfile column) {
        return switch (field.kind()) {
            case DATE -> dated(column, column.dateForms().stream().findFirst(), "YYYY-MM-DD");
            case MOMENT ->
                dated(
                        column,
                        column.dateForms().stream().filter(DateForm::hasTime).findFirst(),
                        "YYYY-MM-DDTHH:MM");
            case CODE, YES_NO -> coded(field, column);
            case TEXT, KEY, WHOLE -> CellForm.AS_WRITTEN;
        };
    }

    private static CellForm dated(ColumnProfile column, Optional<DateForm> form, String ours) {
        return form.filter(
                        found -> !found.form().equals(ours) && !column.texts().isEmpty())
                .<CellForm>map(CellForm.Dated::new)
                .orElse(CellForm.AS_WRITTEN);
    }

    private static CellForm coded(OurField field, ColumnProfile column) {
        Map<String, String> words = new LinkedHashMap<>();
        column.values().keySet().forEach(value -> field.commonWord(value).ifPresent(word -> words.put(value, word)));
        boolean ours = words.entrySet().stream().allMatch(word -> word.getKey().equals(word.getValue()));
        return ours ? CellForm.AS_WRITTEN : new CellForm.Coded(words);
    }

    /** Tomorrow's file has another date in its name. */
    private static String pattern(String fileName) {
        return fileName.replaceAll("[\\[\\]{}?*\\\\]", "?").replaceAll("\\d[\\d_.-]{2,}\\d", "*");
    }

    private static String name(ListKind list, String fileName) {
        int dot = fileName.lastIndexOf('.');
        String stem = (dot > 0 ? fileName.substring(0, dot) : fileName)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z]+", "-")
                .replaceAll("^-+|-+$", "");
        return stem.isEmpty() ? list.code().replace('_', '-') : stem;
    }
}
