package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.proviso.review.news.CaseDifference;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The cases that would change under a newer list, and why. */
final class ChangedCases extends Div {

    private static final int SHOWN = 50;

    ChangedCases(List<CaseDifference> changed) {
        long decided = changed.stream().filter(CaseDifference::touchesDecided).count();
        add(new Paragraph(
                changed.isEmpty()
                        ? "No case would change."
                        : UsDates.count(changed.size(), "case") + " would change, " + decided
                                + " of them already decided."));
        if (changed.isEmpty()) {
            return;
        }
        PlainTable table =
                new PlainTable("Cases that would change", "Envelope", "State", "Outlook now", "New outlook", "Why");
        changed.stream()
                .limit(SHOWN)
                .forEach(difference -> table.row(
                        difference.key().envelopeNo().value(),
                        difference.state().spoken(),
                        difference.outlookBefore().words(),
                        difference.outlookAfter().words(),
                        String.join("; ", difference.because())));
        add(table);
        if (changed.size() > SHOWN) {
            add(new Paragraph("and " + (changed.size() - SHOWN) + " more"));
        }
    }
}
