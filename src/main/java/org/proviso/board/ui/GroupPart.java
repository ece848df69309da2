package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Span;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.core.EnvelopeNumber;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** A consent group: its outcome and reason, the act on the whole group, and its envelopes, a page at a time. */
@Tag("section")
final class GroupPart extends HtmlContainer {

    private static final int PAGE = 20;
    private static final int FOLDED_FROM = 9;

    private final AgendaGroup group;
    private final Function<Collection<EnvelopeNumber>, List<EnvelopeSummary>> explain;
    private final Function<EnvelopeSummary, List<Component>> buttons;
    private final Div lines = new Div();
    private final ActButton more = new ActButton("");
    private int shown;

    GroupPart(
            AgendaGroup group,
            Function<Collection<EnvelopeNumber>, List<EnvelopeSummary>> explain,
            Function<EnvelopeSummary, List<Component>> buttons,
            List<Component> acts) {
        this.group = group;
        this.explain = explain;
        this.buttons = buttons;
        addClassName("group");
        Div head = new Div(title());
        head.addClassName("group-head");
        Div right = new Div();
        right.addClassName("acts");
        right.add(acts);
        head.add(right);
        add(head, envelopes());
    }

    private H3 title() {
        H3 title = new H3();
        title.add(
                BoardWords.mark(group.outcome()),
                new Span(" " + UsDates.count(group.envelopes().size(), "envelope") + ": "
                        + BoardWords.because(group.reason())));
        return title;
    }

    private Component envelopes() {
        more.does(this::next);
        Div all = new Div(lines, more);
        boolean folded = group.envelopes().size() >= FOLDED_FROM;
        Details details = new Details(folded ? "Show " + group.envelopes().size() + " envelopes" : "Envelopes", all);
        details.addOpenedChangeListener(event -> {
            if (event.isOpened() && shown == 0) {
                next();
            }
        });
        details.setOpened(!folded);
        if (!folded) {
            next();
        }
        return details;
    }

    private void next() {
        List<EnvelopeNumber> numbers = group.numbers();
        if (shown >= numbers.size()) {
            return;
        }
        int until = Math.min(numbers.size(), shown + PAGE);
        explain.apply(numbers.subList(shown, until))
                .forEach(line -> lines.add(new DecidingEnvelopePart(line, false, buttons.apply(line))));
        shown = until;
        int left = numbers.size() - shown;
        more.setText("Show " + Math.min(left, PAGE) + " more of " + left);
        more.setVisible(left > 0);
    }
}
