package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.files.InputException;
import org.proviso.intake.cure.CureScan;
import org.proviso.intake.cure.CureScanService;
import org.proviso.intake.desk.BroughtPaper;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;

/** Scans and photos of one evidence: those that are kept, and a way to add one where it was not taken back. */
final class CureScansPart extends Div {

    private final transient CureScanService scans;
    private final EnvelopeKey key;
    private final BroughtPaper paper;
    private final Runnable after;

    CureScansPart(CureScanService scans, EnvelopeKey key, BroughtPaper paper, List<CureScan> kept, Runnable after) {
        this.scans = scans;
        this.key = key;
        this.paper = paper;
        this.after = after;
        addClassName("acts");
        kept.stream().filter(scan -> scan.cureNo() == paper.number()).forEach(scan -> add(link(scan)));
        if (!paper.takenBack()) {
            Upload upload = new Upload(UploadHandler.inMemory((file, content) -> keep(file.fileName(), content)));
            upload.setAcceptedFileTypes("image/png", "image/jpeg");
            upload.setMaxFiles(1);
            upload.setUploadButton(new ActButton("Add scan or photo").quiet());
            upload.setDropLabel(new Span("PNG or JPEG, up to 5 MB"));
            add(upload);
        }
    }

    private Anchor link(CureScan scan) {
        Anchor link = new Anchor(
                "/images/" + key.electionId() + "/" + key.envelopeNo() + "/evidence/" + scan.cureNo() + "/"
                        + scan.number(),
                scan.words());
        link.setRouterIgnore(true);
        link.setTarget("_blank");
        return link;
    }

    private void keep(String name, byte[] content) {
        ActResult<CureScan> kept;
        try {
            kept = scans.keep(key.electionId(), key.envelopeNo(), paper.number(), name, content);
        } catch (InputException e) {
            MessageLine.refused("Scan not saved. " + e.getMessage());
            return;
        }
        if (kept instanceof ActResult.Refused<CureScan> refused) {
            MessageLine.refused("Scan not saved. " + refused.words());
            return;
        }
        after.run();
        MessageLine.done("Scan saved with evidence " + paper.number() + " of envelope " + key.envelopeNo() + ".");
    }
}
