package org.proviso.review.ui.ends;

import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.ui.field.ActDialog;

/** Proposes an end without a decision on the vote: sent on to the home county, or nothing to decide. */
public final class ProposeEndSheet {

    private ProposeEndSheet() {}

    /** To which county the envelope goes is asked. */
    public static void sendOn(
            EnvelopeNumber number, List<Reason> reasons, AdministrativeEndService ends, EndActs acts) {
        TextField county = EndFields.line("County it goes to");
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Propose to send envelope " + number + " on",
                "Submit proposal",
                () -> EndFields.given(county, "Required. Enter the county it goes to.")
                        && acts.run(
                                sheet[0]::refuse,
                                "Envelope " + number + " proposed: send on to "
                                        + county.getValue().strip() + ". Second review is next.",
                                seen -> ends.proposeToSendOn(seen.key(), seen.version(), county.getValue())));
        sheet[0].with("The sealed envelope goes to the voter's home county. It is neither counted nor rejected here. A"
                        + " different reviewer confirms it first.")
                .with("Reason: " + words(reasons) + ".")
                .with(county)
                .open();
    }

    /** Nothing is asked but to go on. */
    public static void close(EnvelopeNumber number, List<Reason> reasons, AdministrativeEndService ends, EndActs acts) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Propose to close envelope " + number + " without a decision",
                "Submit proposal",
                () -> acts.run(
                        sheet[0]::refuse,
                        "Envelope " + number + " proposed: close without a decision. Second review is next.",
                        seen -> ends.proposeToEnd(seen.key(), seen.version())));
        sheet[0].with("There is no vote to decide: the envelope was withdrawn or spoiled, or holds a regular ballot. A"
                        + " different reviewer confirms it first.")
                .with("Reason: " + words(reasons) + ".")
                .open();
    }

    static String words(List<Reason> reasons) {
        return reasons.stream().map(Reason::words).collect(Collectors.joining("; "));
    }
}
