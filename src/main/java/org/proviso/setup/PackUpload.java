package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.nio.charset.StandardCharsets;
import org.proviso.core.adjudication.proof.ProofReport;
import org.proviso.core.adjudication.proof.Violation;
import org.proviso.election.RulesRefusedException;
import org.proviso.election.rules.PutRulesInForce;
import org.proviso.election.rules.RuleChangeService;
import org.proviso.review.assess.WhatIfService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedField;

/** The upload of a pack: what the proof says, which cases it would change, and the act that puts it in force. */
final class PackUpload extends Div {

    private final transient RuleChangeService changes;
    private final transient WhatIfService whatIf;
    private final String election;
    private final Runnable after;
    private final Div shown = new Div();
    private final TypedField counsel = new TypedField("counsel", "Counsel").like("County Counsel");
    private final TypedField ground = new TypedField("ground", "Ground of the override");
    private String content = "";

    PackUpload(RuleChangeService changes, WhatIfService whatIf, String election, Runnable after) {
        this.changes = changes;
        this.whatIf = whatIf;
        this.election = election;
        this.after = after;
        Upload upload = new Upload(UploadHandler.inMemory((metadata, bytes) -> take(bytes)));
        upload.setMaxFiles(1);
        upload.setDropLabel(new Span("or drop it here"));
        upload.setUploadButton(new ActButton("Choose the pack"));
        shown.getElement().setAttribute("role", "status");
        add(
                new H2("Upload a pack"),
                new Paragraph("It is proved and compared first; nothing changes until you put it in force. One that"
                        + " breaks a promise is refused, unless counsel overrides it on record."),
                upload);
    }

    /** Where it is shown what the proof says and which cases would change; empty until a pack was uploaded. */
    Div tried() {
        return shown;
    }

    private void take(byte[] bytes) {
        content = new String(bytes, StandardCharsets.UTF_8);
        shown.removeAll();
        try {
            RuleChangeService.PackTrial tried = changes.tryOut(election, content);
            shown.add(new H2("Uploaded, not in force"));
            shown.add(new Paragraph(
                    tried.pack().name() + ", " + tried.book().pack().hash().substring(0, 12)));
            proof(tried.proof());
            ActButton put = new ActButton(tried.proof().holds() ? "Put it in force" : "Override, and put it in force");
            shown.add(put.first().does(this::put), new RuleDifferencesPart(whatIf.compare(election, tried.book())));
        } catch (RulesRefusedException e) {
            MessageLine.refused("Nothing was read: " + e.getMessage());
            shown.add(new Paragraph("Nothing was read: " + e.getMessage()));
        }
    }

    private void proof(ProofReport proof) {
        if (proof.holds()) {
            shown.add(new Paragraph("Proved: no combination of facts breaks a promise. "
                    + UsDates.count(proof.needRuling().size(), "value") + " to rule on."));
            return;
        }
        for (Violation broken : proof.violations()) {
            Paragraph line = new Paragraph("Breaks a promise. " + broken.promise() + " But " + broken.counterexample());
            line.addClassName("warn");
            shown.add(line);
        }
        counsel.text("");
        ground.text("");
        shown.add(counsel, ground);
    }

    private void put() {
        try {
            int number = changes.putInForce(new PutRulesInForce(election, content, counsel.text(), ground.text()));
            shown.removeAll();
            MessageLine.done("Change " + number + ": the pack is in force; open cases were assessed anew.");
            after.run();
        } catch (RulesRefusedException e) {
            MessageLine.refused(String.valueOf(e.getMessage()));
        }
    }
}
