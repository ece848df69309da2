package org.proviso.canvass.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import java.util.ArrayList;
import java.util.List;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.PlaceFigures;
import org.proviso.canvass.VotingHours;
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

    PlacesPart(List<CanvassFigures> all) {
        all.forEach(this::show);
    }

    private void show(CanvassFigures accounts) {
        String hours = accounts.hours() == VotingHours.EXTENDED ? ", court-extended hours, kept apart" : "";
        add(new H2("By voting location" + hours));
        List<String> heads = new ArrayList<>(List.of("Voting location"));
        SHOWN.forEach(figure -> heads.add(figure.done()));
        PlainTable table = new PlainTable("Envelopes by voting location" + hours, heads.toArray(String[]::new));
        accounts.locations().forEach((place, counts) -> row(table, place, counts));
        row(table, CanvassService.COUNTY, accounts.county());
        table.addClassName("figures");
        add(table);
    }

    private static void row(PlainTable table, String place, PlaceFigures counts) {
        List<String> cells = new ArrayList<>(List.of(place));
        SHOWN.forEach(figure ->
                cells.add(counts.has(figure) ? String.valueOf(counts.figures().get(figure)) : "–"));
        table.row(cells.toArray(String[]::new));
    }
}
