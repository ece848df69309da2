package org.proviso.canvass.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.Supplier;
import org.proviso.canvass.outcomes.EnvelopeOutcomes;
import org.proviso.core.ElectionId;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;

/** Why ballots were rejected, each once, by its main reason. */
@Tag("section")
final class ReasonsPart extends HtmlContainer {

    ReasonsPart(EnvelopeOutcomes outcomes, ElectionId election, Supplier<EnvelopeOutcomes> again) {
        add(new H2("Why ballots were rejected"));
        if (outcomes.rejections().isEmpty()) {
            Paragraph none = new Paragraph("No ballots rejected so far.");
            none.addClassName("soft");
            add(none);
            return;
        }
        add(table(outcomes), DownloadLinks.of("Rejected ballots by main reason", election, () -> table(again.get())));
    }

    private static PlainTable table(EnvelopeOutcomes outcomes) {
        PlainTable table = new PlainTable("Rejected ballots by main reason", "Main reason", "Ballots");
        outcomes.rejections().forEach((reason, number) -> table.row(reason.words(), String.valueOf(number)));
        table.addClassName("figures");
        table.figures("Ballots");
        return table;
    }
}
