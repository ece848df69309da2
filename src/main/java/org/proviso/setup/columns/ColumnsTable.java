package org.proviso.setup.columns;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.proviso.files.mapping.CellForm;
import org.proviso.files.mapping.DateForm;
import org.proviso.files.mapping.FieldSource;
import org.proviso.files.mapping.OurField;
import org.proviso.files.mapping.OurFields;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.Choice;

/** Each of our columns with the column of the file that fills it, and how its texts are read. */
final class ColumnsTable extends Div {

    /** Stands for several columns, or a part of one, as they were proposed. */
    private static final String AS_PROPOSED = "\0";

    private static final int CODES = 6;

    private final transient OwnFile file;
    private final transient Consumer<String> changed;

    /** {@code changed} hears the id of the box in which something was chosen. */
    ColumnsTable(OwnFile file, Consumer<String> changed) {
        this.file = file;
        this.changed = changed;
        PlainTable table = new PlainTable("Columns", "Our column", "Your column", "Read as", "");
        for (OurField field : OurFields.of(file.mapping().list())) {
            Optional<FieldSource> source = file.mapping().source(field.name());
            table.row(List.of(
                    new Span(words(field.name())),
                    columns(field, source),
                    source.map(one -> form(field, one)).orElseGet(Span::new),
                    new Span(field.needed() && source.isEmpty() ? "every row needs it" : "")));
        }
        add(table);
    }

    /** A column as it is spoken of: {@code date of birth}. */
    static String words(String field) {
        return field.replace('_', ' ');
    }

    private Choice columns(OurField field, Optional<FieldSource> source) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "none");
        boolean isSimple = source.filter(one -> one.from().size() != 1 || one.form() instanceof CellForm.PartOf)
                .isEmpty();
        if (!isSimple) {
            choices.put(AS_PROPOSED, String.join(" + ", source.orElseThrow().from()));
        }
        file.recognized().columns().forEach(column -> choices.put(column.name(), column.name()));
        Choice choice = new Choice(choices);
        choice.getElement().setAttribute("aria-label", "Your column for " + words(field.name()));
        String id = "column-" + field.name();
        choice.setId(id);
        choice.setValue(isSimple ? source.map(one -> one.from().get(0)).orElse("") : AS_PROPOSED);
        choice.onChosen(column -> {
            if (!column.equals(AS_PROPOSED)) {
                file.choose(field, column);
            }
            changed.accept(id);
        });
        return choice;
    }

    private Component form(OurField field, FieldSource source) {
        if (source.form() instanceof CellForm.Dated dated) {
            return dates(field, source, dated.form());
        }
        if (source.form() instanceof CellForm.Coded coded) {
            String codes = coded.words().entrySet().stream()
                    .limit(CODES)
                    .map(code -> code.getKey() + " is " + words(code.getValue()))
                    .collect(Collectors.joining(", "));
            return new Span(coded.words().size() > CODES ? codes + " …" : codes);
        }
        return new Span(
                source.form() instanceof CellForm.PartOf part
                        ? "a part of " + words(part.shape().code())
                        : "");
    }

    private Component dates(OurField field, FieldSource source, DateForm taken) {
        List<DateForm> forms = new ArrayList<>(file.dateForms(source));
        String pivot = taken.hasShortYear() ? ", years from " + taken.pivot() + " on" : "";
        if (forms.size() < 2) {
            return new Span(taken.form() + pivot);
        }
        Map<String, String> choices = new LinkedHashMap<>();
        forms.forEach(form -> choices.put(form.form(), form.form()));
        Choice choice = new Choice(choices);
        choice.getElement().setAttribute("aria-label", "Form of the dates of " + words(field.name()));
        String id = "dates-" + field.name();
        choice.setId(id);
        choice.setValue(taken.form());
        choice.onChosen(code -> {
            forms.stream()
                    .filter(form -> form.form().equals(code))
                    .findFirst()
                    .ifPresent(form -> file.choose(field.name(), form));
            changed.accept(id);
        });
        return new Div(choice, new Span(pivot));
    }
}
