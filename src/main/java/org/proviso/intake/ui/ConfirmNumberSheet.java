package org.proviso.intake.ui;

import com.vaadin.flow.component.textfield.TextField;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.intake.numbers.ConfirmNumber;
import org.proviso.intake.numbers.MarkedEnvelope;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Asks why a number that is missing or on several envelopes is right as it is. */
final class ConfirmNumberSheet {

    private static final int LONGEST_REASON = 1000;

    private final NumberCheckService checks;
    private final ElectionId election;
    private final MarkedEnvelope about;
    private final Runnable after;
    private final TextField because = new TextField("Reason");
    private final ActDialog sheet;

    ConfirmNumberSheet(NumberCheckService checks, ElectionId election, MarkedEnvelope about, Runnable after) {
        this.checks = checks;
        this.election = election;
        this.about = about;
        this.after = after;
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        sheet = new ActDialog("Confirm " + about.envelopeNo(), "Confirm as it is", this::confirm);
    }

    void ask() {
        sheet.with("The envelope is marked: " + about.words() + ".")
                .with(because)
                .open();
    }

    private boolean confirm() {
        boolean none = because.getValue().isBlank();
        because.setInvalid(none);
        because.setErrorMessage(none ? "Required. Say what the paper shows." : "");
        if (none) {
            return false;
        }
        ActResult<MarkedEnvelope> result = checks.confirm(new ConfirmNumber(
                election,
                about.envelopeNo(),
                about.mark(),
                about.alsoOn(),
                because.getValue().strip()));
        if (result instanceof ActResult.Refused<MarkedEnvelope> refused) {
            return sheet.refuse(refused.words());
        }
        MessageLine.done(about.envelopeNo() + " confirmed: " + about.words() + ".");
        after.run();
        return true;
    }
}
