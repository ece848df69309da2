package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Span;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.intake.desk.EnvelopeFilter;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.desk.IntakeEnvelopeRow;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;

/** The envelopes, a screen of rows at a time, by how far their keying is or by the beginning of a number. */
final class EnvelopesPart extends Div {

    private final transient EnvelopeListService lists;
    private final ElectionId election;
    private final RowGrid<IntakeEnvelopeRow> rows = new RowGrid<>(
            "Envelopes",
            "No envelopes match. Envelopes are loaded with the election's files or entered one at a time under Receive"
                    + " envelopes.");
    private final TypedField sought = new TypedField("sought", "Envelope or receipt number").like("G-1001");
    private final ChoiceField filter;
    private final Span shown = new Span();
    private final ActButton everywhere = new ActButton("Show all").quiet().does(this::showAll);

    EnvelopesPart(EnvelopeListService lists, ElectionId election, boolean someWait) {
        this.lists = lists;
        this.election = election;
        filter = new ChoiceField("filter", "Show", words());
        filter.code((someWait ? EnvelopeFilter.NOT_KEYED : EnvelopeFilter.ALL).name());
        filter.onChosen(code -> show());
        sought.onTyped(text -> show());
        shown.addClassNames("soft", "small");
        shown.getElement().setAttribute("role", "status");
        Div asked = new Div(filter, sought, shown, everywhere);
        asked.addClassName("asked");
        columns();
        add(
                new H2("Envelopes"),
                asked,
                rows,
                DownloadLinks.of("Envelopes", election, rows).narrowed(this::narrowed));
        addClassName("envelopes");
        show();
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        for (EnvelopeFilter envelopeFilter : EnvelopeFilter.values()) {
            words.put(envelopeFilter.name(), envelopeFilter.words());
        }
        return words;
    }

    private void columns() {
        rows.addComponentColumn(line -> Links.link(line.envelopeNo().value(), "intake/key/" + line.envelopeNo()))
                .setHeader("Envelope")
                .setWidth("6.5rem")
                .setFlexGrow(0);
        rows.number("Receipt", "7rem", line -> ReceiptNumber.text(line.receiptNo()))
                .words("Voting location", "9rem", line -> place(line.votingLocation()))
                .words(
                        "Received",
                        "7rem",
                        line -> line.receivedAt() == null ? "loaded from files" : UsDates.near(line.receivedAt()))
                .words("Keying", "7rem", IntakeEnvelopeRow::keyed);
    }

    private static String place(String votingLocation) {
        return votingLocation.isEmpty() ? "none (by mail or another county)" : votingLocation;
    }

    private String narrowed() {
        EnvelopeFilter which = EnvelopeFilter.valueOf(filter.code());
        String shown = which == EnvelopeFilter.ALL ? "" : "Show: " + which.words();
        String begins = sought.text().isEmpty() ? "" : "Envelope or receipt number: " + sought.text();
        return shown + (shown.isEmpty() || begins.isEmpty() ? "" : "; ") + begins;
    }

    private void show() {
        EnvelopeFilter which = EnvelopeFilter.valueOf(filter.code());
        String text = sought.text();
        rows.show(
                (offset, limit) -> lists.page(election, which, text, offset, limit),
                () -> lists.count(election, which, text));
        int count = lists.count(election, which, text);
        int elsewhere = count > 0 || text.isEmpty() ? 0 : lists.count(election, EnvelopeFilter.ALL, text);
        shown.setText(UsDates.count(count, "envelope") + (elsewhere > 0 ? ", " + elsewhere + " among all." : ""));
        everywhere.setVisible(elsewhere > 0);
    }

    /** Whoever looks for a number need not know how far its keying is. */
    private void showAll() {
        filter.code(EnvelopeFilter.ALL.name());
        show();
    }
}
