package org.proviso.canvass.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.PlaceFigures;
import org.proviso.canvass.VotingHours;
import org.proviso.core.ElectionId;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;

/** The figures of each voting location and of the county; a figure nobody has noted is a dash, never zero. */
@Tag("section")
final class PlacesPart extends HtmlContainer {

    static final List<Figure> SHOWN = List.of(
            Figure.ISSUED,
            Figure.SENT_BACK,
            Figure.RECEIVED,
            Figure.COUNTED,
            Figure.COUNTED_IN_PART,
            Figure.REJECTED,
            Figure.SENT_ON,
            Figure.ENDED,
            Figure.PENDING);

    PlacesPart(List<CanvassFigures> all, ElectionId election, Supplier<List<CanvassFigures>> again) {
        for (CanvassFigures accounts : all) {
            VotingHours hours = accounts.hours();
            add(
                    new H2("By voting location" + words(hours)),
                    table(accounts),
                    DownloadLinks.of(
                            "Envelopes by voting location" + words(hours),
                            election,
                            () -> table(again.get().stream()
                                    .filter(now -> now.hours() == hours)
                                    .findFirst()
                                    .orElseThrow())));
        }
    }

    private static String words(VotingHours hours) {
        return hours == VotingHours.EXTENDED ? ", court-extended hours, kept apart" : "";
    }

    private static PlainTable table(CanvassFigures accounts) {
        List<String> heads = new ArrayList<>(List.of("Voting location"));
        SHOWN.forEach(figure -> heads.add(figure.done()));
        PlainTable table =
                new PlainTable("Envelopes by voting location" + words(accounts.hours()), heads.toArray(String[]::new));
        table.figures(SHOWN.stream().map(Figure::done).toArray(String[]::new));
        accounts.locations().forEach((place, counts) -> row(table, place, counts));
        row(table, CanvassService.COUNTY, accounts.county());
        table.addClassName("figures");
        return table;
    }

    private static void row(PlainTable table, String place, PlaceFigures counts) {
        List<String> cells = new ArrayList<>(List.of(place));
        SHOWN.forEach(figure ->
                cells.add(counts.has(figure) ? String.valueOf(counts.figures().get(figure)) : "–"));
        table.row(cells.toArray(String[]::new));
    }
}
