package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.TotalDetail;
import org.proviso.canvass.TotalDetailService;
import org.proviso.core.ElectionId;

/** The bags, batches, envelopes and notes behind a total, read when somebody unfolds them. */
final class TotalDetailPart extends Details {

    /** Reads them for whoever may close the election. */
    record Reader(TotalDetailService service, boolean mayRead, ElectionId election) {

        Reader(TotalDetailService service, AccessService access, ElectionId election) {
            this(service, access.isPermitted(Permission.CLOSE_ELECTION), election);
        }

        Optional<Component> part(BalanceResult balance) {
            return mayRead ? Optional.of(new TotalDetailPart(this, balance)) : Optional.empty();
        }
    }

    private final Div lines = new Div();

    private TotalDetailPart(Reader reader, BalanceResult balance) {
        super("Show the bags and envelopes behind it");
        addClassName("fold");
        getElement().setAttribute("aria-label", "Bags and envelopes behind: " + balance.words());
        add(lines);
        addOpenedChangeListener(event -> {
            if (event.isOpened()) {
                show(reader.service().behind(reader.election(), balance.where(), balance.identity()));
            }
        });
    }

    private void show(TotalDetail detail) {
        lines.removeAll();
        for (TotalDetail.Part part : detail.parts()) {
            lines.add(new H4(part.heading()));
            part.lines().forEach(line -> lines.add(line(line)));
            if (part.more() > 0) {
                lines.add(line("and " + part.more() + " more"));
            }
        }
        if (detail.parts().isEmpty()) {
            lines.add(line("Nothing is recorded here. The figure is noted nowhere yet."));
        }
    }

    private static Paragraph line(String words) {
        Paragraph line = new Paragraph(words);
        line.addClassName("small");
        return line;
    }
}
