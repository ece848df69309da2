package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.nio.charset.StandardCharsets;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.proof.ProofReport;
import org.proviso.core.adjudication.proof.Violation;
import org.proviso.election.RuleChange;
import org.proviso.election.rules.PutRulesInForce;
import org.proviso.election.rules.RuleChangeService;
import org.proviso.review.assess.WhatIfService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedField;

/** Uploading a rule pack: the proof's result, the cases it would change, and the button that puts it in force. */
final class PackUpload extends Div {

    private final transient RuleChangeService changes;
    private final transient WhatIfService whatIf;
    private final ElectionId election;
    private final Runnable after;
    private final Div shown = new Div();
    private final TypedField counsel = new TypedField("counsel", "Counsel").like("County Counsel");
    private final TypedField ground = new TypedField("ground", "Reason for the override");
    private String content = "";

    PackUpload(RuleChangeService changes, WhatIfService whatIf, ElectionId election, Runnable after) {
        this.changes = changes;
        this.whatIf = whatIf;
        this.election = election;
        this.after = after;
        Upload upload = new Upload(UploadHandler.inMemory((metadata, bytes) -> take(bytes)));
        upload.setMaxFiles(1);
        upload.setDropLabel(new Span("or drop it here"));
        upload.setUploadButton(new ActButton("Choose rule pack"));
        shown.getElement().setAttribute("role", "status");
        add(
                new H2("Upload a rule pack"),
                new Paragraph(
                        "The rule pack is proved and compared first. Nothing changes until you put it in force. A pack"
                                + " that fails the proof is refused unless counsel overrides it on record."),
                upload);
    }

    /** Shows the proof's result and the cases that would change; empty until a pack is uploaded. */
    Div tried() {
        return shown;
    }

    private void take(byte[] bytes) {
        take("Uploaded", new String(bytes, StandardCharsets.UTF_8));
    }

    /** Proves and compares a pack under the heading that says where it is from; whether it could be read. */
    boolean take(String from, String text) {
        content = text;
        shown.removeAll();
        ActResult<RuleChangeService.PackTrial> read = changes.tryOut(election, content);
        if (read instanceof ActResult.Refused<RuleChangeService.PackTrial> refused) {
            MessageLine.refused("File not read: " + refused.words());
            shown.add(new Paragraph("File not read: " + refused.words()));
        }
        read.ifAccepted().ifPresent(trial -> show(from, trial));
        return !read.isRefused();
    }

    private void show(String from, RuleChangeService.PackTrial tried) {
        shown.add(new H2(from + ", not in force"));
        shown.add(new Paragraph(
                tried.pack().name() + ", " + tried.book().pack().hash().substring(0, 12)));
        proof(tried.proof());
        ActButton put =
                new ActButton(tried.proof().holds() ? "Put rule pack in force" : "Override and put rule pack in force");
        shown.add(
                put.first().does(this::put),
                new RuleDifferencesPart(
                        whatIf.compare(election, tried.book()),
                        election,
                        "Rule pack: " + tried.pack().name() + ", "
                                + tried.book().pack().hash().substring(0, 12),
                        () -> whatIf.compare(election, tried.book())));
    }

    private void proof(ProofReport proof) {
        if (proof.holds()) {
            shown.add(new Paragraph("Proof passed: no combination of facts breaks a promise. "
                    + UsDates.count(proof.needRuling().size(), "value") + " to rule on."));
            return;
        }
        for (Violation broken : proof.violations()) {
            Paragraph line = new Paragraph("Proof failed. " + broken.promise() + " But " + broken.counterexample());
            line.addClassName("warn");
            shown.add(line);
        }
        counsel.text("");
        ground.text("");
        shown.add(counsel, ground);
    }

    private void put() {
        ActResult<RuleChange> result =
                changes.putInForce(new PutRulesInForce(election, content, counsel.text(), ground.text()));
        if (result instanceof ActResult.Refused<RuleChange> refused) {
            MessageLine.refused(refused.words());
        }
        result.ifAccepted().ifPresent(change -> {
            shown.removeAll();
            MessageLine.done(
                    "Change " + change.changeNo() + ": the rule pack is in force. Open cases were reassessed.");
            after.run();
        });
    }
}
