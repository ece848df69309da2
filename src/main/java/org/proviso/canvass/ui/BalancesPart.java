package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.stream.Stream;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;

/** The totals: out of balance first, then those that lack a figure; those that agree are folded. */
@Tag("section")
final class BalancesPart extends HtmlContainer {

    private final List<BalanceResult> open;
    private final FigureSheet noting;
    private final ExplanationSheet explaining;
    private final TotalDetailPart.Reader details;

    BalancesPart(
            List<BalanceResult> balances,
            FigureSheet noting,
            ExplanationSheet explaining,
            TotalDetailPart.Reader details) {
        this.details = details;
        this.noting = noting;
        this.explaining = explaining;
        this.open = balances.stream().filter(balance -> !balance.isSettled()).toList();
        add(new H2("Out of balance"));
        List<BalanceResult> pending =
                balances.stream().filter(BalancesPart::isLeftUndecided).toList();
        List<BalanceResult> sums = balances.stream()
                .filter(balanceResult -> !pending.contains(balanceResult))
                .toList();
        List<BalanceResult> wrong =
                sums.stream().filter(BalanceResult.Differs.class::isInstance).toList();
        if (wrong.isEmpty()) {
            Paragraph none = new Paragraph("Nothing is out of balance. Every total that can be checked agrees.");
            none.addClassName("soft");
            add(none);
        }
        wrong.forEach(balance -> add(line(balance)));
        List<BalanceResult> explained =
                sums.stream().filter(BalanceResult.Explained.class::isInstance).toList();
        if (!explained.isEmpty()) {
            add(new H2("Explained"));
            explained.forEach(balance -> add(line(balance)));
        }
        fold("totals cannot be checked yet", sums.stream().filter(BalanceResult.CannotBeChecked.class::isInstance));
        fold(
                "places still have undecided envelopes. At closing only envelopes held by law may be undecided",
                pending.stream());
        fold("totals agree", sums.stream().filter(BalanceResult.Holds.class::isInstance));
    }

    /** Undecided envelopes matter only at closing. */
    private static boolean isLeftUndecided(BalanceResult balance) {
        return balance.identity() == BalanceRule.NOTHING_PENDING && !(balance instanceof BalanceResult.Holds);
    }

    private void fold(String words, Stream<BalanceResult> balances) {
        List<Component> lines = balances.map(this::line).toList();
        if (!lines.isEmpty()) {
            Details fold = new Details(lines.size() + " " + words, new Div(lines.toArray(Component[]::new)));
            fold.addClassName("fold");
            add(fold);
        }
    }

    /** The county's total is explained where its locations' are. */
    private boolean isExplainedInItsLocations(BalanceResult balance) {
        return balance.where().isCounty()
                && open.stream()
                        .anyMatch(other -> !other.where().isCounty()
                                && other.identity() == balance.identity()
                                && other.where().hours() == balance.where().hours());
    }

    private Component line(BalanceResult balance) {
        Paragraph line = new Paragraph(new Span(balance.words() + " "));
        if (!balance.isSettled()) {
            noting.link(balance).ifPresent(line::add);
            if (!isExplainedInItsLocations(balance)) {
                explaining.button(balance).ifPresent(button -> line.add(new Text(" "), button));
            }
        }
        line.addClassName(balance instanceof BalanceResult.Differs && !isLeftUndecided(balance) ? "warn" : "plainly");
        Div all = new Div(line);
        explaining.text(balance).ifPresent(all::add);
        if (!balance.isSettled()) {
            details.part(balance).ifPresent(all::add);
        }
        return all;
    }
}
