package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.proviso.review.file.HistoryEntry;
import org.proviso.ui.UsDates;

/** The history of the case: what was done, by whom and when. It is read when unfolded. */
final class HistoryPart extends NativeDetails {

    HistoryPart(CasePageContext desk) {
        addClassName("history");
        setSummary(new Span("History"));
        addToggleListener(event -> {
            if (event.isOpened()) {
                setContent(lines(desk.acts().history().of(desk.key())));
            }
        });
    }

    private static Div lines(List<HistoryEntry> acts) {
        Div lines = new Div();
        for (HistoryEntry act : acts) {
            Span at = new Span(UsDates.moment(act.at()));
            at.addClassNames("num", "soft");
            lines.add(new Div(at, new Span(" " + act.words() + ", " + act.by())));
        }
        if (acts.isEmpty()) {
            lines.add(new Span("No acts yet. Loaded with the election's files."));
        }
        return lines;
    }
}
