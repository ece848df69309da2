package org.proviso.ledger.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import jakarta.annotation.security.PermitAll;
import java.io.ByteArrayInputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.LedgerReadService;
import org.proviso.access.Permission;
import org.proviso.core.chain.ChainHead;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerVerdict;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The ledger: every act, newest first, without names. It is verified and exported here. */
@Route(value = "ledger", layout = OfficeFrame.class)
@PageTitle("Ledger · Proviso")
@PermitAll
public final class LedgerView extends Composite<Div> {

    private final transient LedgerReadService ledger;
    private final List<ElectionLine> elections;
    private final Div chainPart = new Div();

    LedgerView(LedgerReadService ledger, AccessService access, WorkingElection workplace) {
        access.demand(Permission.READ_LEDGER);
        this.ledger = ledger;
        chainPart.addClassName("fill");
        this.elections = workplace.election().stream().toList();
        getContent().addClassNames("sheet", "ledger");
        getContent()
                .add(
                        new PageHead(
                                "Ledger",
                                "Every act, chained to the one before it. People appear as pseudonyms, and personal"
                                        + " data as salted hashes."),
                        choice(),
                        chainPart);
        show(
                elections.isEmpty()
                        ? LedgerChain.OFFICE
                        : LedgerChain.of(elections.get(0).id()));
    }

    private RadioButtonGroup<String> choice() {
        RadioButtonGroup<String> choice = new RadioButtonGroup<>("Ledger");
        String ofOffice = "Office: accounts, roles, passwords";
        if (elections.isEmpty()) {
            choice.setItems(ofOffice);
            choice.setValue(ofOffice);
            return choice;
        }
        String ofElection = "Election of " + UsDates.day(elections.get(0).date());
        choice.setItems(ofElection, ofOffice);
        choice.setValue(ofElection);
        choice.addValueChangeListener(event -> show(
                ofOffice.equals(event.getValue())
                        ? LedgerChain.OFFICE
                        : LedgerChain.of(elections.get(0).id())));
        return choice;
    }

    private ZoneId zone() {
        return elections.isEmpty() ? ZoneOffset.UTC : elections.get(0).zone();
    }

    private void show(LedgerChain chain) {
        ChainHead head = ledger.head(chain);
        chainPart.removeAll();
        Div acts = new Div(new ActButton("Verify chain").does(() -> check(chain)), export(chain));
        acts.addClassName("acts");
        chainPart.add(
                acts,
                new ChainHeadLine(head),
                new ChainEntries(ledger, chain, zone()),
                DownloadLinks.of(
                        "Ledger entries",
                        chain.election().orElse(null),
                        () -> new ChainEntries(ledger, chain, zone())
                                .getContent()
                                .listed()));
    }

    private void check(LedgerChain chain) {
        LedgerVerdict verdict = ledger.verify(chain);
        if (verdict.isWhole()) {
            MessageLine.done("The chain is intact: " + verdict.entries() + " entries verified.");
        } else {
            MessageLine.refused("The chain is broken after " + verdict.entries() + " entries: "
                    + verdict.fault().orElseThrow());
        }
    }

    private Anchor export(LedgerChain chain) {
        String name = chain.equals(LedgerChain.OFFICE) ? "office-ledger.jsonl" : "election-ledger.jsonl";
        Anchor export = new Anchor(
                DownloadHandler.fromInputStream(event -> {
                    StringWriter lines = new StringWriter();
                    ledger.export(chain, lines);
                    byte[] bytes = lines.toString().getBytes(StandardCharsets.UTF_8);
                    return new DownloadResponse(
                            new ByteArrayInputStream(bytes), name, "application/jsonl", bytes.length);
                }),
                "Export ledger file");
        export.getElement().setAttribute("download", true);
        return export;
    }
}
