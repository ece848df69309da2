package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.proviso.intake.desk.LocationReturn;
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
        long off = returns.stream().filter(one -> !one.addsUp()).count();
        if (!returns.isEmpty()) {
            String rest = (returns.size() - off) + " of " + returns.size() + " are in balance.";
            add(new Paragraph(off == 0 ? "All " + returns.size() + " are in balance." : rest));
        }
        returns.forEach(this::show);
    }

    private void show(LocationReturn one) {
        Paragraph sentence = new Paragraph(one.sentence());
        sentence.setClassName("warn", !one.addsUp());
        sentence.setClassName("small", one.addsUp());
        if (!one.addsUp()) {
            sentence.add(" ");
            sentence.add(Links.link("View transmittals", "intake/transmittals"));
        }
        Paragraph bags = new Paragraph(bags(one));
        bags.addClassNames("soft", "small");
        add(sentence);
        if (!one.transmittals().isEmpty()) {
            add(bags);
        }
    }

    private static String bags(LocationReturn one) {
        return one.transmittals().stream()
                .map(sent -> String.format(
                        Locale.US,
                        "bag %s, seal %s",
                        sent.transmittal().bag(),
                        sent.transmittal().sealIn()))
                .collect(Collectors.joining("; "));
    }
}
