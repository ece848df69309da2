package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.proviso.roll.HeldList;
import org.proviso.roll.SnapshotKind;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** All loaded lists, in use or not, with when they were loaded and how many rows they have. */
final class ListsPart extends Div {

    ListsPart(List<HeldList> lists, ZoneId zone) {
        add(new H2("Lists of this election"));
        PlainTable table = new PlainTable("Lists of this election", "List", "No.", "Rows", "Loaded", "");
        lists.forEach(list -> table.row(
                words(list.kind()),
                String.valueOf(list.snapshotNo()),
                String.format(Locale.US, "%,d", list.rows()),
                UsDates.moment(LocalDateTime.ofInstant(list.loadedAt(), zone)),
                list.inUse() ? "in use" : "not in use"));
        add(table);
    }

    static String words(SnapshotKind kind) {
        return switch (kind) {
            case ROLL -> "Roll";
            case MAIL_BALLOTS -> "Mail-ballot records";
            case CHECK_INS -> "Check-ins";
            case VOTED_ELSEWHERE -> "Voted in another county (from the state)";
        };
    }
}
