package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Map;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ElectionClosingResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/** Keeping the day's figures, and closing the election once every sum holds. */
final class ClosingButtons {

    private final CanvassService canvass;
    private final String election;
    private final Runnable after;

    ClosingButtons(CanvassService canvass, String election, Runnable after) {
        this.canvass = canvass;
        this.election = election;
        this.after = after;
    }

    Component[] buttons() {
        return new Component[] {
            new ActButton("Keep today's figures").does(this::keep),
            new ActButton("Close the election").first().does(this::ask)
        };
    }

    private void keep() {
        List<String> fallen = canvass.keepDailyFigures(election, Map.of());
        after.run();
        if (fallen.isEmpty()) {
            MessageLine.done("Today's figures are kept; none became less.");
        } else {
            MessageLine.refused("Kept, but look: " + String.join(" ", fallen));
        }
    }

    private void ask() {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Close the election?", "Close it", () -> close(sheet[0]));
        sheet[0].with("Every sum must hold to the last envelope. Once closed, cases can be read and nothing about them"
                        + " changes any more. The head of the ledger is printed on the certificate.")
                .open();
    }

    private boolean close(ActDialog sheet) {
        ElectionClosingResult closing = canvass.closeElection(election);
        if (closing instanceof ElectionClosingResult.NotYet not) {
            return sheet.refuse("Not yet. " + String.join(" ", not.because()));
        }
        after.run();
        MessageLine.done(
                "The election is closed. Head of the ledger: " + ((ElectionClosingResult.Closed) closing).headHash());
        return true;
    }
}
