package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.proviso.canvass.Balance;

/** The sums: those that differ first, then those that lack a figure, and those that hold folded away. */
@Tag("section")
final class BalancesPart extends HtmlContainer {

    private final NotingSheet noting;

    BalancesPart(List<Balance> balances, NotingSheet noting) {
        this.noting = noting;
        add(new H2("What does not add up"));
        List<Balance> wrong =
                balances.stream().filter(Balance.Differs.class::isInstance).toList();
        if (wrong.isEmpty()) {
            Paragraph none = new Paragraph("Nothing: every sum that can be checked holds.");
            none.addClassName("soft");
            add(none);
        }
        wrong.forEach(balance -> add(line(balance)));
        fold(balances, Balance.CannotBeChecked.class, "cannot be checked yet");
        fold(balances, Balance.Holds.class, "hold");
    }

    private void fold(List<Balance> balances, Class<? extends Balance> kind, String words) {
        List<Balance> those = balances.stream().filter(kind::isInstance).toList();
        if (!those.isEmpty()) {
            Div lines = new Div();
            those.forEach(balance -> lines.add(line(balance)));
            Details fold = new Details(those.size() + " sums " + words, lines);
            fold.addClassName("fold");
            add(fold);
        }
    }

    private Component line(Balance balance) {
        Paragraph line = new Paragraph(new Span(balance.words() + " "));
        if (!(balance instanceof Balance.Holds)) {
            noting.link(balance).ifPresent(line::add);
        }
        line.addClassName(balance instanceof Balance.Differs ? "warn" : "plainly");
        return line;
    }
}
