package org.proviso.canvass.ui;

import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.proviso.canvass.outcomes.EnvelopeOutcomes;
import org.proviso.canvass.outcomes.EnvelopeOutcomes.End;
import org.proviso.core.ElectionId;
import org.proviso.files.flow.EnvelopeFlow;
import org.proviso.files.flow.EnvelopeFlowDrawing;
import org.proviso.files.flow.EnvelopeFlowEnd;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;

/** Where the envelopes went: from the reason of issue to the outcome, drawn and as a table. */
@Tag("section")
final class FlowPart extends HtmlContainer {

    FlowPart(EnvelopeOutcomes outcomes, ElectionId election, Supplier<EnvelopeOutcomes> again) {
        EnvelopeFlow flow = flow(outcomes);
        addClassName("flow");
        add(new H2("Where the envelopes went"));
        if (flow.counts().isEmpty()) {
            add(new Paragraph("No envelopes received yet. Their way from reason issued to outcome is drawn here."));
            return;
        }
        Html picture = new Html("<div class=\"picture\">"
                + EnvelopeFlowDrawing.of(
                        flow, "From reason issued to outcome. The table next to it has the same figures")
                + "</div>");
        Div both = new Div(picture, table(flow));
        both.addClassName("both");
        add(both, DownloadLinks.of("Envelopes by reason issued and outcome", election, () -> table(flow(again.get()))));
    }

    private static EnvelopeFlow flow(EnvelopeOutcomes outcomes) {
        Map<String, Map<EnvelopeFlowEnd, Integer>> rows = new LinkedHashMap<>();
        outcomes.byIssueReason().forEach((reason, row) -> {
            Map<EnvelopeFlowEnd, Integer> drawn = new LinkedHashMap<>();
            row.forEach((end, number) -> drawn.put(end(end), number));
            rows.put(reason, drawn);
        });
        return EnvelopeFlow.of(rows, Stream.of(End.values()).map(FlowPart::end).toList());
    }

    private static EnvelopeFlowEnd end(End end) {
        return new EnvelopeFlowEnd(end.beside(), end.name().toLowerCase(java.util.Locale.ROOT));
    }

    private static PlainTable table(EnvelopeFlow flow) {
        List<EnvelopeFlowEnd> ends =
                flow.ends().stream().filter(end -> flow.to(end) > 0).toList();
        List<String> heads = new ArrayList<>(List.of("Reason issued"));
        ends.forEach(end -> heads.add(end.words()));
        heads.add("all");
        PlainTable table = new PlainTable("Envelopes by reason issued and outcome", heads.toArray(String[]::new));
        table.figures(heads.subList(1, heads.size()).toArray(String[]::new));
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
