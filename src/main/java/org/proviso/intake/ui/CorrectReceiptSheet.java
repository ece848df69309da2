package org.proviso.intake.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.intake.numbers.CorrectReceipt;
import org.proviso.intake.numbers.MarkedEnvelope;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Asks for the receipt number as it should have been entered, and why. */
final class CorrectReceiptSheet {

    private static final int LONGEST_REASON = 1000;
    private static final int LONGEST_NUMBER = 60;
    private static final String NUMBER = "([0-9A-Z][0-9A-Z-]*)?";

    private final NumberCheckService checks;
    private final ElectionId election;
    private final MarkedEnvelope about;
    private final Runnable after;
    private final TextField receipt = new TextField("Receipt number");
    private final TextField because = new TextField("Reason");
    private final ActDialog sheet;

    /** What stood in the box when the person was told that it is on another envelope too. */
    private @Nullable String toldShared;

    CorrectReceiptSheet(NumberCheckService checks, ElectionId election, MarkedEnvelope about, Runnable after) {
        this.checks = checks;
        this.election = election;
        this.about = about;
        this.after = after;
        receipt.setMaxLength(LONGEST_NUMBER);
        receipt.setValue(ReceiptNumber.text(about.receiptNo()));
        receipt.setHelperText("Leave it empty if none is printed on the envelope.");
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        sheet = new ActDialog("Correct receipt number of " + about.envelopeNo(), "Save number", this::correct);
    }

    void ask() {
        sheet.with("The envelope is marked: " + about.words() + ".")
                .with(receipt, because)
                .open();
    }

    private boolean correct() {
        String text = receipt.getValue().strip().toUpperCase(Locale.ROOT);
        say(receipt, text.matches(NUMBER) ? "" : "Use letters, digits and hyphens only.");
        say(because, because.getValue().isBlank() ? "Required. Say what the paper shows." : "");
        if (receipt.isInvalid() || because.isInvalid()) {
            return false;
        }
        ActResult<EnvelopeNumber> result = checks.correct(new CorrectReceipt(
                election,
                about.envelopeNo(),
                about.version(),
                ReceiptNumber.orNull(text),
                text.equals(toldShared),
                because.getValue().strip()));
        result.refusals().forEach(refusal -> refused(refusal, text));
        if (result.isRefused()) {
            return false;
        }
        MessageLine.done("Receipt number of " + about.envelopeNo() + " corrected.");
        after.run();
        return true;
    }

    private void refused(Refusal refusal, String text) {
        if (refusal.field() == null) {
            boolean unused = sheet.refuse(refusal.words());
            return;
        }
        boolean shared = refusal.why() == Why.NUMBER_TAKEN;
        toldShared = shared ? text : null;
        say(receipt, refusal.words() + (shared ? " If the paper says so, save again." : ""));
    }

    private static void say(TextField field, String wrong) {
        field.setInvalid(!wrong.isEmpty());
        field.setErrorMessage(wrong);
    }
}
