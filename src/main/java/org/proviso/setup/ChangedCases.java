package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.core.ElectionId;
import org.proviso.review.news.CaseDifference;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The cases that would change under a newer list, and why. */
final class ChangedCases extends Div {

    private static final int SHOWN = 50;

    /** {@code reader} reads them anew, for a file. */
    ChangedCases(ElectionId election, Supplier<List<CaseDifference>> reader) {
        List<CaseDifference> changed = reader.get();
        long decided = changed.stream().filter(CaseDifference::touchesDecided).count();
        add(new Paragraph(
                changed.isEmpty()
                        ? "No case would change."
                        : UsDates.count(changed.size(), "case") + " would change, " + decided
                                + " of them already decided."));
        if (changed.isEmpty()) {
            return;
        }
        add(
                table(changed.subList(0, Math.min(SHOWN, changed.size()))),
                DownloadLinks.of("Cases that would change", election, () -> table(reader.get())));
        if (changed.size() > SHOWN) {
            add(new Paragraph("and " + (changed.size() - SHOWN) + " more"));
        }
    }

    private static PlainTable table(List<CaseDifference> changed) {
        PlainTable table =
                new PlainTable("Cases that would change", "Envelope", "State", "Outlook now", "New outlook", "Why");
        changed.forEach(difference -> table.row(
                difference.key().envelopeNo().value(),
                difference.state().spoken(),
                difference.outlookBefore().words(),
                difference.outlookAfter().words(),
                String.join("; ", difference.because())));
        return table;
    }
}
