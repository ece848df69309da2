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
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.core.act.ActResult;
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
        List<Figure> told = balance.identity().toBeNoted();
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
        sheet[0] = new ActDialog("Record a figure for " + balance.where().name(), "Record figure", () -> {
            if (number.getValue() == null) {
                return ActDialog.refuse(number, "Enter the number.");
            }
            if (because.isEmpty()) {
                return ActDialog.refuse(because, "Enter the source of the figure.");
            }
            return note(sheet[0], balance.where(), figure.getValue(), number.getValue(), because.getValue());
        });
        sheet[0].with(balance.words()).with(figure, number, because).open();
    }

    private boolean note(ActDialog sheet, CanvassPlace where, Figure figure, int number, String because) {
        ActResult<NoteFigure> noted =
                canvass.noteFigure(new NoteFigure(election.id(), where.name(), where.hours(), figure, number, because));
        if (noted instanceof ActResult.Refused<NoteFigure> refused) {
            return sheet.refuse(refused.words());
        }
        after.run();
        MessageLine.done("Recorded: " + where.name() + " " + figure.words(number) + ".");
        return true;
    }
}
