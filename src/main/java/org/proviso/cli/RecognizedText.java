package org.proviso.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.files.InputException;
import org.proviso.files.mapping.CellForm;
import org.proviso.files.mapping.ColumnProfile;
import org.proviso.files.mapping.DateForm;
import org.proviso.files.mapping.FieldSource;
import org.proviso.files.mapping.Mapping;
import org.proviso.files.mapping.Misfit;
import org.proviso.files.mapping.OurField;
import org.proviso.files.mapping.OurFields;
import org.proviso.files.mapping.Preview;
import org.proviso.files.mapping.Recognized;

/** What was recognized of an office's file and what its proposed mapping makes of it, for the terminal. */
final class RecognizedText {

    private static final int MISFITS = 40;

    private final StringBuilder text = new StringBuilder();
    private final Recognized recognized;
    private final Mapping mapping;

    private RecognizedText(Recognized recognized, Mapping mapping) {
        this.recognized = recognized;
        this.mapping = mapping;
    }

    static String of(String file, Recognized recognized, Mapping mapping, Preview preview) {
        RecognizedText told = new RecognizedText(recognized, mapping);
        told.line(String.format(
                Locale.US,
                "%s: %,d rows for %s",
                file,
                recognized.rows(),
                mapping.list().file()));
        told.form();
        recognized.columns().forEach(told::column);
        told.without();
        told.misfits(preview);
        return told.text.toString();
    }

    private void form() {
        String sure = recognized.encodingSure() ? "" : " (not sure: look at names with accents)";
        line(String.format(
                Locale.US, "  encoding   %s%s", mapping.source().encoding().name(), sure));
        line(String.format(
                Locale.US,
                "  delimiter  %s",
                mapping.source().delimiter().code().replace('_', ' ')));
        line(String.format(Locale.US, "  header     %s", mapping.source().header() ? "yes" : "no"));
        if (!mapping.empty().isEmpty()) {
            line(String.format(Locale.US, "  read as nothing: %s", String.join(", ", mapping.empty())));
        }
    }

    private void column(ColumnProfile column) {
        List<FieldSource> uses = mapping.fields().stream()
                .filter(source -> source.from().contains(column.name()))
                .toList();
        if (uses.isEmpty()) {
            line(String.format(Locale.US, "  %s: not read", column.name()));
        }
        uses.forEach(
                use -> line(String.format(Locale.US, "  %s -> %s%s", column.name(), use.field(), form(use, column))));
    }

    private static String form(FieldSource use, ColumnProfile column) {
        if (use.form() instanceof CellForm.Dated dated) {
            String pivot = dated.form().hasShortYear()
                    ? ", two-digit years from " + dated.form().pivot() + " on"
                    : "";
            return ", " + dated.form().form() + pivot + others(dated.form(), column);
        }
        if (use.form() instanceof CellForm.Coded coded) {
            return ", "
                    + coded.words().entrySet().stream()
                            .map(code ->
                                    code.getKey() + " = " + code.getValue() + count(column.values(), code.getKey()))
                            .collect(Collectors.joining(", "));
        }
        return use.form() instanceof CellForm.PartOf part
                ? ", a part of " + part.shape().code().replace('_', ' ')
                : "";
    }

    /** Days up to the twelfth leave open which number is the month. */
    private static String others(DateForm taken, ColumnProfile column) {
        List<String> others = column.dateForms().stream()
                .map(DateForm::form)
                .filter(form -> !form.equals(taken.form()))
                .toList();
        return others.isEmpty() ? "" : " (" + String.join(" and ", others) + " would fit too)";
    }

    private static String count(Map<String, Long> values, String code) {
        return values.containsKey(code) ? String.format(Locale.US, " (%,d)", values.get(code)) : "";
    }

    private void without() {
        String names = OurFields.of(mapping.list()).stream()
                .map(OurField::name)
                .filter(name -> mapping.source(name).isEmpty())
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            line(String.format(Locale.US, "  no column for: %s", names));
        }
        if (!mapping.missing().isEmpty()) {
            line(String.format(Locale.US, "  every row needs: %s", String.join(", ", mapping.missing())));
        }
    }

    private void misfits(Preview preview) {
        if (preview.wrongRows() > 0) {
            line(String.format(Locale.US, "  %,d rows do not have as many fields as the header", preview.wrongRows()));
        }
        preview.misfits().stream().limit(MISFITS).forEach(this::misfit);
        if (preview.misfits().size() > MISFITS) {
            line(String.format(
                    Locale.US, "  and %,d more values", preview.misfits().size() - MISFITS));
        }
        if (preview.misfits().isEmpty() && preview.wrongRows() == 0) {
            line("  every value fits");
        }
    }

    private void misfit(Misfit misfit) {
        line(String.format(
                Locale.US,
                "  does not fit: column %s, %s in %,d rows, the first on line %d (%s)",
                misfit.column(),
                misfit.value().isEmpty() ? "nothing" : InputException.quoted(misfit.value()),
                misfit.count(),
                misfit.firstLine(),
                misfit.field()));
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
