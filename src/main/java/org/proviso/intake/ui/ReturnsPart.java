package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.desk.LocationReturn;
import org.proviso.intake.desk.LocationReturn.Arrival;
import org.proviso.ui.Links;

/** What each voting location sent back, a sentence each; what does not add up stands on top. */
final class ReturnsPart extends Div {

    ReturnsPart(List<LocationReturn> returns) {
        addClassName("returns");
        add(new H2("Returns from voting locations"));
        if (returns.isEmpty()) {
            add(new Paragraph("No transmittals yet. They are loaded with the election's files or entered by hand"
                    + " under Transmittals."));
        }
        long off = returns.stream()
                .filter(locationReturn -> !locationReturn.addsUp())
                .count();
        if (!returns.isEmpty()) {
            String rest = (returns.size() - off) + " of " + returns.size() + " are in balance.";
            add(new Paragraph(
                    off == 0 ? "All " + returns.size() + " are in balance." : rest + " " + arrivals(returns)));
        }
        returns.forEach(this::show);
    }

    /** {@code 12 returned, 1 returned in part, 1 nothing yet.} */
    private static String arrivals(List<LocationReturn> returns) {
        return number(returns, Arrival.RETURNED) + " returned, " + number(returns, Arrival.PARTLY)
                + " returned in part, " + number(returns, Arrival.NOTHING_YET) + " nothing yet.";
    }

    private static long number(List<LocationReturn> returns, Arrival arrival) {
        return returns.stream().filter(each -> each.arrival() == arrival).count();
    }

    private void show(LocationReturn locationReturn) {
        Paragraph sentence = new Paragraph(locationReturn.sentence());
        sentence.setClassName("warn", !locationReturn.addsUp());
        sentence.setClassName("small", locationReturn.addsUp());
        if (!locationReturn.addsUp()) {
            sentence.add(" ");
            boolean missing = locationReturn.transmittals().isEmpty()
                    && !locationReturn.votingLocation().isEmpty();
            sentence.add(
                    missing
                            ? Links.link(
                                    "Record transmittal", RecordTransmittal.missing(locationReturn.votingLocation()))
                            : Links.link("View transmittals", "intake/transmittals"));
        }
        Paragraph bags = new Paragraph(bags(locationReturn));
        bags.addClassNames("soft", "small");
        add(sentence);
        if (!locationReturn.transmittals().isEmpty()) {
            add(bags);
        }
    }

    private static String bags(LocationReturn locationReturn) {
        return locationReturn.transmittals().stream()
                .map(sent -> String.format(
                        Locale.US,
                        "bag %s, seal %s",
                        sent.transmittal().bag(),
                        sent.transmittal().sealIn()))
                .collect(Collectors.joining("; "));
    }
}
