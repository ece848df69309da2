package org.proviso.review.ui.ends;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.CaseState;
import org.proviso.review.ends.CountyReceipt;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.EndOfCase;
import org.proviso.ui.field.ActButton;

/** How a case ended without a decision, and what can still be done: print the form, record the receipt, reopen it. */
public final class EndedCaseActs extends Div {

    public EndedCaseActs(CaseFile file, EndedCaseService ended, AccessService access, EndActs acts) {
        addClassName("acts");
        EnvelopeKey key = file.now().key();
        boolean sentOn = file.now().state() == CaseState.SENT_ON;
        EndOfCase end = file.work().end();
        add(new Span(words(file)));
        if (access.isPermitted(Permission.REOPEN_ENDED)) {
            add(new ActButton("Reopen\u2026")
                    .does(() -> ReopenEndedSheet.open(key.envelopeNo(), end.receiptWords(), ended, acts)));
        }
        if (sentOn && end.receipt().isEmpty() && access.isPermitted(Permission.PROPOSE)) {
            add(new ActButton("Record receipt\u2026")
                    .does(() -> CountyReceiptSheet.open(key.envelopeNo(), ended, acts)));
        }
        if (sentOn && end.proposed().isPresent()) {
            add(form(key));
        }
    }

    /** The form that goes with the envelope. */
    public static Anchor form(EnvelopeKey key) {
        Anchor form = new Anchor("/review/sent-on/" + key.electionId() + "/" + key.envelopeNo(), "Form for envelope");
        form.setRouterIgnore(true);
        form.setAriaLabel("Form for envelope " + key.envelopeNo());
        return form;
    }

    /** How the case ended. */
    public static String words(CaseFile file) {
        if (file.now().state() == CaseState.ENDED) {
            return "Closed without a decision: there was no vote to decide.";
        }
        String county = file.work()
                .end()
                .proposed()
                .map(details -> details.proposal().toCounty())
                .orElse("the voter's home county");
        return "Sent on to " + county + ". Not decided here. "
                + file.work().end().receipt().map(CountyReceipt::words).orElse("No receipt from there yet.");
    }
}
