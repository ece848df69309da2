package org.proviso.canvass.ui;

import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proviso.canvass.Outcomes;
import org.proviso.canvass.Outcomes.End;
import org.proviso.ui.Flow;
import org.proviso.ui.FlowDrawing;
import org.proviso.ui.FlowEnd;
import org.proviso.ui.PlainTable;

/** Where the envelopes went: from the reason of issue to the outcome, drawn and as a table. */
@Tag("section")
final class FlowPart extends HtmlContainer {

    FlowPart(Outcomes outcomes) {
        Flow flow = flow(outcomes);
        addClassName("flow");
        add(new H2("Where the envelopes went"));
        Html picture = new Html("<div class=\"picture\">"
                + FlowDrawing.of(flow, "From reason issued to outcome. The table next to it has the same figures")
                + "</div>");
        Div both = new Div(picture, table(flow));
        both.addClassName("both");
        add(both);
    }

    private static Flow flow(Outcomes outcomes) {
        Map<String, Map<FlowEnd, Integer>> rows = new LinkedHashMap<>();
        outcomes.byIssueReason().forEach((reason, row) -> {
            Map<FlowEnd, Integer> drawn = new LinkedHashMap<>();
            row.forEach((end, number) -> drawn.put(end(end), number));
            rows.put(reason, drawn);
        });
        return Flow.of(rows, Stream.of(End.values()).map(FlowPart::end).toList());
    }

    private static FlowEnd end(End end) {
        return new FlowEnd(end.beside(), end.name().toLowerCase(java.util.Locale.ROOT));
    }

    private static PlainTable table(Flow flow) {
        List<FlowEnd> ends =
                flow.ends().stream().filter(end -> flow.to(end) > 0).toList();
        List<String> heads = new ArrayList<>(List.of("Reason issued"));
        ends.forEach(end -> heads.add(end.words()));
        heads.add("all");
        PlainTable table = new PlainTable("Envelopes by reason issued and outcome", heads.toArray(String[]::new));
        flow.counts().forEach((reason, row) -> {
            List<String> cells = new ArrayList<>(List.of(reason));
            ends.forEach(end -> cells.add(String.valueOf(row.getOrDefault(end, 0))));
            cells.add(String.valueOf(flow.from(reason)));
            table.row(cells.toArray(String[]::new));
        });
        table.addClassName("figures");
        return table;
    }
}
