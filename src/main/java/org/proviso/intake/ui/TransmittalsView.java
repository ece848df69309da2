package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.intake.TransmittalService;
import org.proviso.intake.desk.LocationReturn;
import org.proviso.intake.desk.LocationReturnService;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Transmittals: recorded when a bag is opened, and corrected here. */
@Route(value = "intake/transmittals", layout = OfficeFrame.class)
@PageTitle("Transmittals · Proviso")
@PermitAll
public final class TransmittalsView extends Composite<Div> implements BeforeEnterObserver {

    private final transient LocationReturnService returns;
    private final ElectionId election;
    private final Div list = new Div();
    private final TransmittalForm form;

    TransmittalsView(TransmittalService transmittals, LocationReturnService returns, WorkingElection workplace) {
        this.returns = returns;
        this.election = workplace.electionId();
        form = new TransmittalForm(transmittals, election, this::show);
        Div side = new Div(form);
        side.addClassName("side");
        Div bench = new Div(list, side);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead(
                                        "Transmittals",
                                        "What each location's return says, next to the envelopes received.")
                                .beside(Links.link("Back to Intake", "intake")),
                        bench);
        show();
    }

    /** The address may name the location whose return is missing. */
    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        event.getLocation()
                .getQueryParameters()
                .getSingleParameter(RecordTransmittal.PLACE)
                .ifPresent(form::begin);
    }

    private void show() {
        list.removeAll();
        List<LocationReturn> all = returns.all(election);
        form.here(all);
        list.add(new H2("Recorded"));
        List<LocationReturn> known = recorded(all);
        if (known.isEmpty()) {
            list.add(new Span("No transmittals recorded yet. Enter the first one here."));
            return;
        }
        list.add(
                table(known), DownloadLinks.of("Transmittals", election, () -> table(recorded(returns.all(election)))));
    }

    private static List<LocationReturn> recorded(List<LocationReturn> all) {
        return all.stream()
                .filter(locationReturn -> !locationReturn.transmittals().isEmpty())
                .toList();
    }

    private PlainTable table(List<LocationReturn> known) {
        PlainTable table = new PlainTable(
                "Transmittals",
                "Voting location",
                "Bag",
                "Outgoing, return seal",
                "Issued",
                "Spoiled",
                "Unused",
                "Sent back",
                "Received",
                "");
        known.forEach(
                locationReturn -> locationReturn.transmittals().forEach(sent -> row(table, locationReturn, sent)));
        return table.figures("Issued", "Spoiled", "Unused", "Sent back", "Received");
    }

    private void row(PlainTable table, LocationReturn place, RecordedTransmittal sent) {
        Transmittal transmittal = sent.transmittal();
        List<com.vaadin.flow.component.Component> cells = new ArrayList<>();
        Span name = new Span(transmittal.votingLocation());
        name.setClassName("waits", !place.addsUp());
        name.setTitle(place.sentence());
        cells.add(name);
        for (String number : List.of(
                transmittal.bag(),
                transmittal.sealOut() + ", " + transmittal.sealIn(),
                String.valueOf(transmittal.issued()),
                String.valueOf(transmittal.spoiled()),
                transmittal.unused() == null ? "" : String.valueOf(transmittal.unused()),
                String.valueOf(transmittal.returned()),
                String.valueOf(place.here()))) {
            Span cell = new Span(number);
            cell.addClassName("num");
            cells.add(cell);
        }
        ActButton correct = new ActButton("Correct").quiet().does(() -> form.correct(sent));
        correct.setAriaLabel("Correct " + transmittal.votingLocation() + ", bag " + transmittal.bag());
        cells.add(correct);
        table.row(cells);
    }
}
