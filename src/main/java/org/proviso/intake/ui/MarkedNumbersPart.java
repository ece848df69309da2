package org.proviso.intake.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.Comparator;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.intake.numbers.MarkedEnvelope;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.intake.numbers.NumberMark;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.ActButton;

/** The envelopes whose receipt number is missing or of which a number is on others, each to be settled by a person. */
final class MarkedNumbersPart extends Div {

    private static final int SHOWN = 20;

    private final transient NumberCheckService checks;
    private final ElectionId election;

    MarkedNumbersPart(NumberCheckService checks, ElectionId election) {
        this.checks = checks;
        this.election = election;
        addClassName("numbers");
        show();
    }

    private void show() {
        removeAll();
        List<MarkedEnvelope> marked = marked();
        setVisible(!marked.isEmpty());
        if (marked.isEmpty()) {
            return;
        }
        long open = marked.stream().filter(one -> !one.isSettled()).count();
        add(
                new H2("Numbers to settle"),
                new Paragraph(
                        open == 0
                                ? "Every number that is missing or on several envelopes is confirmed as it is."
                                : "Look at the envelope. Correct its receipt number, or confirm what it says. A voter whose"
                                        + " number is on several envelopes may have to call the office."));
        List<MarkedEnvelope> shown = marked.subList(0, Math.min(SHOWN, marked.size()));
        add(table(shown), DownloadLinks.of("Numbers to settle", election, () -> table(marked())));
        if (shown.size() < marked.size()) {
            add(new Paragraph("The first " + shown.size() + " of " + marked.size() + " are shown."));
        }
    }

    private List<MarkedEnvelope> marked() {
        return checks.all(election).stream()
                .sorted(Comparator.comparing(MarkedEnvelope::isSettled))
                .toList();
    }

    private PlainTable table(List<MarkedEnvelope> shown) {
        PlainTable table =
                new PlainTable("Numbers to settle", "Envelope", "Receipt", "Voting location", "Marked", "Settled", "");
        shown.forEach(one -> table.row(List.of(
                Links.link(one.envelopeNo().value(), "intake/key/" + one.envelopeNo()),
                new Span(ReceiptNumber.text(one.receiptNo())),
                new Span(one.votingLocation()),
                new Span(one.words()),
                new Span(one.confirmed() == null ? "" : "confirmed: " + one.confirmed()),
                acts(one))));
        return table;
    }

    private Component acts(MarkedEnvelope one) {
        Div acts = new Div();
        acts.addClassName("acts");
        if (!one.isSettled()) {
            ActButton confirm = new ActButton("Confirm as it is…")
                    .quiet()
                    .does(() -> new ConfirmNumberSheet(checks, election, one, this::show).ask());
            confirm.setAriaLabel("Confirm " + one.envelopeNo() + ": " + one.words());
            acts.add(confirm);
        }
        if (one.mark() != NumberMark.NUMBER_SHARED) {
            ActButton correct = new ActButton("Correct receipt number…")
                    .quiet()
                    .does(() -> new CorrectReceiptSheet(checks, election, one, this::show).ask());
            correct.setAriaLabel("Correct receipt number of " + one.envelopeNo());
            acts.add(correct);
        }
        return acts;
    }
}
