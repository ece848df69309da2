package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.canvass.VotingHours;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;

/** Asks a supervisor for a figure that only a person can supply, and its source. */
final class FigureSheet {

    private final CanvassService canvass;
    private final ElectionLine election;
    private final Runnable after;
    private final boolean mayNote;

    FigureSheet(CanvassService canvass, AccessService access, ElectionLine election, Runnable after) {
        this.canvass = canvass;
        this.election = election;
        this.after = after;
        this.mayNote = access.isPermitted(Permission.CLOSE_ELECTION) && !election.closed();
    }

    /** The button next to a total that lacks a figure or is out of balance; empty if no figure may be recorded. */
    Optional<Component> link(BalanceResult balance) {
        List<Figure> told = canvass.toBeNoted(balance.identity());
        if (!mayNote || told.isEmpty()) {
            return Optional.empty();
        }
        ActButton button = new ActButton("Record a figure").quiet().does(() -> ask(balance, told));
        button.getElement().setAttribute("aria-label", "Record a figure for " + balance.place());
        return Optional.of(button);
    }

    private void ask(BalanceResult balance, List<Figure> told) {
        Select<Figure> figure = new Select<>();
        figure.setLabel("Figure");
        figure.setItems(told);
        figure.setItemLabelGenerator(Figure::asked);
        figure.setValue(told.get(0));
        IntegerField number = new IntegerField("Number");
        number.setMin(0);
        TextArea because = new TextArea("Source of the figure");
        because.setWidthFull();
        because.setMaxLength(4000);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Record a figure for " + place(balance), "Record figure", () -> {
            if (number.getValue() == null || because.isEmpty()) {
                return sheet[0].refuse("Enter the number and its source.");
            }
            note(balance, figure.getValue(), number.getValue(), because.getValue());
            return true;
        });
        sheet[0].with(balance.words()).with(figure, number, because).open();
    }

    private void note(BalanceResult balance, Figure figure, int number, String because) {
        canvass.noteFigure(new NoteFigure(election.id(), place(balance), hours(balance), figure, number, because));
        after.run();
        MessageLine.done("Recorded: " + place(balance) + " " + figure.words(number) + ".");
    }

    private static VotingHours hours(BalanceResult balance) {
        return balance.place().endsWith(EXTENDED) ? VotingHours.EXTENDED : VotingHours.REGULAR;
    }

    private static String place(BalanceResult balance) {
        return balance.place().endsWith(EXTENDED)
                ? balance.place().substring(0, balance.place().length() - EXTENDED.length())
                : balance.place();
    }

    private static final String EXTENDED = " in extended hours";
}
