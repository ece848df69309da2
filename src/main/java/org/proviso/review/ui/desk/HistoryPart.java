package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.proviso.review.file.HistoryEntry;
import org.proviso.ui.UsDates;

/** The history of the case: what was done, by whom and when. It is read when unfolded. */
public final class HistoryPart extends NativeDetails {

    HistoryPart(CasePageContext desk) {
        addClassName("history");
        setSummary(new Span("History"));
        addToggleListener(event -> {
            if (event.isOpened()) {
                setContent(list(desk.acts().history().of(desk.key())));
            }
        });
    }

    /** Every act with its day, the oldest first, as a plain list. */
    public static Component list(List<HistoryEntry> acts) {
        if (acts.isEmpty()) {
            return new Span("No acts yet. Loaded with the election's files.");
        }
        OrderedList lines = new OrderedList();
        lines.addClassName("dated");
        for (HistoryEntry act : acts) {
            Span at = new Span(UsDates.moment(act.at()));
            at.addClassNames("num", "soft");
            lines.add(new ListItem(at, new Span(act.words() + ", " + act.by())));
        }
        return lines;
    }
}
