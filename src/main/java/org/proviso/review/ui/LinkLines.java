package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.explain.MatchWords;
import org.proviso.review.file.FieldBeside;
import org.proviso.review.queue.SureLink;
import org.proviso.review.ui.voters.FieldMark;
import org.proviso.ui.Links;
import org.proviso.ui.PlainTable;

/** Sure links in a table, the record's name, date of birth and address beside the envelope's, each with a box to tick. */
final class LinkLines extends Div {

    /** A line on the page: its box, and where something is said about it. */
    private record Line(SureLink link, Checkbox box, Span said) {}

    private final PlainTable table;
    private final Map<EnvelopeNumber, Line> lines = new LinkedHashMap<>();

    LinkLines(List<SureLink> links, Runnable ticked) {
        addClassName("beside");
        table = new PlainTable(
                "Links to confirm",
                "Confirm",
                "Envelope and record",
                FieldBeside.Field.NAME.words(),
                FieldBeside.Field.BIRTH_DATE.words(),
                FieldBeside.Field.ADDRESS.words(),
                "Likelihood and evidence");
        for (SureLink link : links) {
            EnvelopeNumber number = link.seen().key().envelopeNo();
            Checkbox box = new Checkbox();
            box.setAriaLabel("Confirm " + number);
            box.addValueChangeListener(event -> ticked.run());
            Span said = new Span();
            said.addClassName("problem");
            lines.put(number, new Line(link, box, said));
            table.row(cells(link, box, said));
        }
        add(table.acts("Confirm"));
    }

    private static List<Component> cells(SureLink link, Checkbox box, Span said) {
        EnvelopeNumber number = link.seen().key().envelopeNo();
        List<Component> cells = new ArrayList<>();
        cells.add(box);
        Span record = new Span(link.voterId().value());
        record.addClassNames("num", "soft");
        cells.add(
                new Div(new Div(Links.link(number.value(), "review/case/" + number)), new Div(record), new Div(said)));
        for (FieldBeside.Field field : FieldBeside.Field.values()) {
            cells.add(link.fields().stream()
                    .filter(beside -> beside.field() == field)
                    .findFirst()
                    .<Component>map(LinkLines::both)
                    .orElseGet(Span::new));
        }
        Span evidence = new Span(String.join(" ", link.evidence()));
        evidence.addClassName("soft");
        cells.add(new Div(new Div(new Span(MatchWords.words(link.probability()))), new Div(evidence)));
        return cells;
    }

    private static Component both(FieldBeside field) {
        Span onEnvelope = new Span(field.onEnvelope().isBlank() ? "empty" : field.onEnvelope());
        onEnvelope.setClassName("num", field.field() == FieldBeside.Field.BIRTH_DATE);
        return new Div(new Div(onEnvelope), new FieldMark(field));
    }

    PlainTable table() {
        return table;
    }

    List<SureLink> links() {
        return lines.values().stream().map(Line::link).toList();
    }

    List<SureLink> ticked() {
        return lines.values().stream()
                .filter(line -> line.box().getValue())
                .map(Line::link)
                .toList();
    }

    void tick(EnvelopeNumber number) {
        line(number).box().setValue(true);
    }

    /** Ticks the lines in which the record says in every field what the envelope says; the others are read one by one. */
    void tickTheSame() {
        lines.values().stream()
                .filter(line -> line.link().isTheSame())
                .forEach(line -> line.box().setValue(true));
    }

    void untickAll() {
        lines.values().forEach(line -> line.box().setValue(false));
    }

    /** Says something about one line, which is not ticked any more. */
    void tell(EnvelopeNumber number, String words) {
        Line line = line(number);
        line.box().setValue(false);
        line.said().setText(words);
    }

    private Line line(EnvelopeNumber number) {
        Line line = lines.get(number);
        if (line == null) {
            throw new IllegalArgumentException("no line of the page is about envelope " + number);
        }
        return line;
    }
}
