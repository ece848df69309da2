package org.proviso.today.calendar;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.proviso.core.rules.DeadlineList;
import org.proviso.ui.PlainTable;

/** Deadlines without a date: they run from an act still to come, or the rule is unknown. */
final class UndatedTable extends Composite<PlainTable> {

    private final List<DeadlineList.Line> lines;

    UndatedTable(List<DeadlineList.Line> lines) {
        this.lines = lines;
    }

    @Override
    protected PlainTable initContent() {
        PlainTable table = new PlainTable("Undated deadlines", "Deadline", "Rule", "Source");
        lines.forEach(line -> table.row(List.of(
                new Span(line.words()),
                new Span(line.given().isKnown() ? line.given().value().inWords() : "county ruling needed"),
                DatesTable.source(line.given()))));
        return table;
    }
}
