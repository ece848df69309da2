package org.proviso.today;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.proviso.ui.Links;

/** Totals out of balance, a sentence each. */
@Tag("section")
final class OutOfBalancePart extends HtmlContainer {

    private static final int SHOWN = 4;
    private static final int NAMED = 5;

    /** Silent locations are told here to those whose work they are not. */
    OutOfBalancePart(OutOfBalance.Found found, boolean asWork) {
        List<String> sentences = found.differences();
        addClassName("sums");
        add(new H2("Out of balance"));
        sentences.stream().limit(SHOWN).forEach(sentence -> {
            Paragraph line = new Paragraph(new Span(sentence + " "), Links.link("Resolve", "canvass"));
            line.addClassName("warn");
            add(line);
        });
        if (sentences.size() > SHOWN) {
            add(new Paragraph(Links.link("and " + (sentences.size() - SHOWN) + " more", "canvass")));
        }
        List<String> silent = found.withoutReturn();
        if (!silent.isEmpty() && !asWork) {
            String more = silent.size() > NAMED ? ", and " + (silent.size() - NAMED) + " more" : "";
            String names = String.join(", ", silent.subList(0, Math.min(NAMED, silent.size())));
            Paragraph line = new Paragraph("No return yet from " + names + more + ".");
            line.addClassName("warn");
            add(line);
        }
        if (sentences.isEmpty() && (silent.isEmpty() || asWork)) {
            Paragraph none = new Paragraph(
                    silent.isEmpty()
                            ? "All voting locations are in balance."
                            : "All voting locations whose return is here are in balance.");
            none.addClassName("soft");
            add(none);
        }
    }
}
