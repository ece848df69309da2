package org.proviso.setup;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.HeldList;
import org.proviso.roll.ListReadService;
import org.proviso.roll.SnapshotKind;
import org.proviso.setup.aside.MendRowSheet;
import org.proviso.setup.aside.SetAsideChoice;
import org.proviso.setup.aside.SetAsideTable;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;

/** All loaded lists, in use or not, with when they were loaded and how many rows they have. */
final class ListsPart extends Div {

    private final transient ListReadService reads;
    private final transient NewerFileService newer;
    private final ElectionLine election;
    private final transient Runnable after;

    ListsPart(ListReadService reads, NewerFileService newer, ElectionLine election, Runnable after) {
        this.newer = newer;
        this.after = after;
        this.reads = reads;
        this.election = election;
        add(
                new H2("Lists of this election"),
                table(),
                DownloadLinks.of("Lists of this election", election.id(), this::table));
    }

    private PlainTable table() {
        ZoneId zone = election.zone();
        PlainTable table =
                new PlainTable("Lists of this election", "List", "No.", "Rows", "Set aside", "Loaded", "Use");
        reads.held(election.id())
                .forEach(list -> table.row(List.of(
                        new Span(words(list.kind())),
                        new Span(String.valueOf(list.snapshotNo())),
                        new Span(String.format(Locale.US, "%,d", list.rows())),
                        aside(list),
                        new Span(UsDates.moment(LocalDateTime.ofInstant(list.loadedAt(), zone))),
                        new Span(list.inUse() ? "in use" : "not in use"))));
        return table.figures("Rows");
    }

    private Component aside(HeldList list) {
        if (list.rowsAside() == 0) {
            return new Span("0");
        }
        ActButton button = new ActButton(UsDates.count(list.rowsAside(), "row"));
        button.getElement().setAttribute("aria-label", "Rows set aside of list " + list.snapshotNo());
        return button.quiet().does(() -> show(list));
    }

    private void show(HeldList list) {
        Dialog rows = new Dialog("Rows set aside of list " + list.snapshotNo());
        rows.setWidth("52rem");
        rows.add(
                new Paragraph(
                        "These rows could not be read and are not in use. " + SetAsideChoice.atStake(list.kind())),
                table(list, rows));
        rows.getFooter().add(new ActButton("Close").does(rows::close));
        rows.open();
    }

    private SetAsideTable table(HeldList list, Dialog rows) {
        return list.inUse()
                ? new SetAsideTable(reads, election.id(), list.snapshotNo(), row -> mend(list, row, rows))
                : new SetAsideTable(reads, election.id(), list.snapshotNo(), list.rowsAside());
    }

    private void mend(HeldList list, int row, Dialog rows) {
        reads.toMend(election.id(), list.snapshotNo(), row)
                .ifPresent(mendable -> new MendRowSheet(newer, election.id(), list.snapshotNo(), row, mendable, () -> {
                            rows.close();
                            after.run();
                        })
                        .open());
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
