package org.proviso.setup;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.election.orders.CourtOrderScan;
import org.proviso.election.orders.CourtOrderScanService;
import org.proviso.files.InputException;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;

/** The scans of one court order: those that are kept, to be downloaded, and a way to add one. */
final class OrderScansPart extends Div {

    private final transient CourtOrderScanService scans;
    private final ElectionId election;
    private final int orderNo;
    private final Runnable after;

    OrderScansPart(
            CourtOrderScanService scans, ElectionId election, int orderNo, List<CourtOrderScan> kept, Runnable after) {
        this.scans = scans;
        this.election = election;
        this.orderNo = orderNo;
        this.after = after;
        kept.stream().filter(scan -> scan.orderNo() == orderNo).forEach(scan -> add(new Div(link(scan))));
        Upload upload = new Upload(UploadHandler.inMemory((file, content) -> keep(file.fileName(), content)));
        upload.setAcceptedFileTypes("application/pdf", "image/png", "image/jpeg");
        upload.setMaxFiles(1);
        ActButton button = new ActButton("Add scan").quiet();
        button.setAriaLabel("Add scan of order " + orderNo);
        upload.setUploadButton(button);
        upload.setDropLabel(new Span("PDF up to 10 MB, PNG or JPEG up to 5 MB"));
        add(upload);
    }

    private Anchor link(CourtOrderScan scan) {
        Anchor link =
                new Anchor("/set-up/orders/" + election + "/" + scan.orderNo() + "/" + scan.number(), scan.words());
        link.setRouterIgnore(true);
        return link;
    }

    private void keep(String name, byte[] content) {
        ActResult<CourtOrderScan> kept;
        try {
            kept = scans.keep(election, orderNo, name, content);
        } catch (InputException e) {
            MessageLine.refused("Scan not saved. " + e.getMessage());
            return;
        }
        if (kept instanceof ActResult.Refused<CourtOrderScan> refused) {
            MessageLine.refused("Scan not saved. " + refused.words());
            return;
        }
        after.run();
        MessageLine.done("Scan saved with order " + orderNo + ".");
    }
}
