package org.proviso.setup.columns;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.proviso.files.mapping.Misfit;
import org.proviso.files.mapping.OurField;
import org.proviso.files.mapping.OurFields;
import org.proviso.files.mapping.Preview;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.Choice;

/** The first rows as they will be read, and what of the whole file does not fit; a code gets its word here. */
final class WhatFitsPart extends Div {

    /** So many values that do not fit are shown. */
    private static final int SHOWN = 40;

    private final transient OwnFile file;
    private final transient Consumer<String> changed;

    /** {@code changed} hears the id of the box in which something was chosen. */
    WhatFitsPart(OwnFile file, Consumer<String> changed) {
        this.file = file;
        this.changed = changed;
        Preview preview = file.preview();
        add(new H2("The first rows as they will be read"), rows(preview));
        add(new H2("What does not fit"));
        add(new Paragraph(inShort(preview)));
        if (!preview.misfits().isEmpty()) {
            add(misfits(preview));
        }
        if (preview.misfits().size() > SHOWN) {
            add(new Paragraph("And " + UsDates.count(preview.misfits().size() - SHOWN, "more value") + "."));
        }
    }

    private Div rows(Preview preview) {
        List<OurField> all = OurFields.of(file.mapping().list());
        List<Integer> filled = IntStream.range(0, all.size())
                .filter(at -> file.mapping().source(all.get(at).name()).isPresent())
                .boxed()
                .toList();
        PlainTable table = new PlainTable(
                "The first rows as they will be read",
                filled.stream()
                        .map(at -> ColumnsTable.words(all.get(at).name()))
                        .toArray(String[]::new));
        preview.first().forEach(row -> table.row(filled.stream().map(row::get).toArray(String[]::new)));
        return OwnFileRows.scrolling(table);
    }

    private static String inShort(Preview preview) {
        String rows = UsDates.count(preview.rows(), "row") + " read. ";
        if (preview.refused() == 0) {
            return rows + "Every value that a load looks at fits.";
        }
        String cells = preview.wrongRows() == 0
                ? ""
                : UsDates.count(preview.wrongRows(), "row") + " with another number of cells than the header. ";
        return rows + cells + "Values that a load refuses: " + preview.refused()
                + ". The file can be loaded without these rows: they are set aside.";
    }

    private PlainTable misfits(Preview preview) {
        List<Misfit> unknown = OwnFile.unknownCodes(file.mapping(), preview);
        PlainTable table =
                new PlainTable("What does not fit", "Your column", "Value", "Rows", "First line", "Read as", "Meaning");
        preview.misfits().stream()
                .limit(SHOWN)
                .forEach(misfit -> table.row(new ArrayList<>(List.of(
                        new Span(misfit.column()),
                        new Span(misfit.value().isEmpty() ? "nothing" : misfit.value()),
                        new Span(String.valueOf(misfit.count())),
                        new Span(String.valueOf(misfit.firstLine())),
                        new Span(ColumnsTable.words(misfit.field()) + (misfit.refused() ? "" : ", as it came")),
                        unknown.contains(misfit) ? word(misfit, unknown.indexOf(misfit)) : new Span()))));
        return table;
    }

    /** Where one gets its meaning, the next takes its place. */
    private Choice word(Misfit misfit, int place) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", "not known yet");
        OurFields.find(file.mapping().list(), misfit.field())
                .ifPresent(field -> field.words().forEach(word -> words.put(word, ColumnsTable.words(word))));
        Choice choice = new Choice(words);
        choice.getElement().setAttribute("aria-label", "Meaning of " + misfit.value());
        String id = "meaning-" + place;
        choice.setId(id);
        choice.onChosen(word -> {
            if (!word.isEmpty()) {
                file.choose(misfit.field(), misfit.value(), word);
            }
            changed.accept(id);
        });
        return choice;
    }
}
