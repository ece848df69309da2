package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Map;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.ChainHead;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/** Saving the day's figures, and closing the election once every total agrees. */
final class ClosingButtons {

    private final CanvassService canvass;
    private final ElectionId election;
    private final Runnable after;

    ClosingButtons(CanvassService canvass, ElectionId election, Runnable after) {
        this.canvass = canvass;
        this.election = election;
        this.after = after;
    }

    Component[] buttons() {
        return new Component[] {
            new ActButton("Save today's figures").does(this::keep),
            new ActButton("Close the election").first().does(this::ask)
        };
    }

    private void keep() {
        ActResult<List<String>> kept = canvass.keepDailyFigures(election, Map.of());
        after.run();
        if (kept instanceof ActResult.Refused<List<String>> refused) {
            MessageLine.refused("Not saved. " + refused.words());
        }
        kept.ifAccepted().ifPresent(ClosingButtons::saved);
    }

    private static void saved(List<String> fallen) {
        if (fallen.isEmpty()) {
            MessageLine.done("Today's figures saved. No figure went down.");
        } else {
            MessageLine.refused("Saved. Check these: " + String.join(" ", fallen));
        }
    }

    private void ask() {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Close the election?", "Close election", () -> close(sheet[0]));
        sheet[0].with("Every total must agree to the last envelope. After closing, cases can be read but not"
                        + " changed. The ledger's chain head is printed on the certificate.")
                .open();
    }

    private boolean close(ActDialog sheet) {
        ActResult<ChainHead> closing = canvass.closeElection(election);
        if (closing instanceof ActResult.Refused<ChainHead> refused) {
            return sheet.refuse("Not closed. " + refused.words());
        }
        after.run();
        closing.ifAccepted()
                .ifPresent(head -> MessageLine.done("The election is closed. Ledger chain head: " + head.hash()));
        return true;
    }
}
