package org.proviso.setup;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Status;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.core.act.Refusal;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.CourtOrderScan;
import org.proviso.election.orders.CourtOrderScanService;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.Choice;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** Orders of courts: those the office received, a new one, and how each stands now. */
@Route(value = "set-up/orders", layout = OfficeFrame.class)
@PageTitle("Court orders · Proviso")
@PermitAll
public final class CourtOrdersView extends Composite<Div> {

    private final transient CourtOrderRecordService orders;
    private final transient CourtOrderScanService scans;
    private final ElectionId election;
    private final Div list = new Div();

    CourtOrdersView(
            CourtOrderRecordService orders,
            CourtOrderScanService scans,
            AccessService access,
            WorkingElection workplace) {
        access.demand(Permission.RECORD_ORDERS);
        this.orders = orders;
        this.scans = scans;
        this.election = workplace.electionId();
        Div side = new Div(new CourtOrderForm(orders, election, this::show));
        side.addClassName("side");
        Div bench = new Div(list, side);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead(
                                        "Court orders",
                                        "Each order is recorded separately. The election's rules do not change.")
                                .beside(Links.link("Back to Setup", "set-up")),
                        bench);
        show();
    }

    private void show() {
        list.removeAll();
        list.add(new H2("On file"));
        List<RecordedCourtOrder> all = orders.all(election);
        if (all.isEmpty()) {
            list.add(new Paragraph("No court orders for this election. Orders are loaded with the"
                    + " election's files or recorded here when the office receives them."));
            return;
        }
        list.add(table(all), DownloadLinks.of("Court orders", election, () -> table(orders.all(election))));
    }

    private PlainTable table(List<RecordedCourtOrder> all) {
        PlainTable table = new PlainTable("Court orders", "No.", "Order", "Court and date", "Scope", "Scans", "Status");
        List<CourtOrderScan> kept = scans.scans(election);
        all.forEach(recordedOrder -> table.row(List.of(
                new Span(String.valueOf(recordedOrder.orderNo())),
                new Span(what(recordedOrder.order())),
                new Span(recordedOrder.order().court() + ", "
                        + UsDates.digits(recordedOrder.order().date())
                        + (recordedOrder.source().isEmpty() ? "" : ". " + recordedOrder.source())),
                new Span(about(recordedOrder.order())),
                new OrderScansPart(scans, election, recordedOrder.orderNo(), kept, this::show),
                standing(recordedOrder))));
        return table;
    }

    private static String what(CourtOrder order) {
        return order.kind().code() + (order.until() == null ? "" : " until " + UsDates.moment(order.until()));
    }

    private static String about(CourtOrder order) {
        String which = order.envelopeNos().isEmpty()
                ? ""
                : " (" + Key.join(", ", order.envelopeNos().stream().sorted().toList()) + ")";
        return order.scope() + which;
    }

    private Choice standing(RecordedCourtOrder recordedOrder) {
        Choice choice = new Choice(standings());
        choice.setValue(recordedOrder.order().standing().code());
        choice.getElement().setAttribute("aria-label", "Status of order " + recordedOrder.orderNo());
        choice.onChosen(
                code -> change(recordedOrder, Code.find(Status.class, code).orElseThrow()));
        return choice;
    }

    private void change(RecordedCourtOrder recordedOrder, Status standing) {
        try {
            List<Refusal> refusals = orders.change(election, recordedOrder.orderNo(), recordedOrder.version(), standing)
                    .refusals();
            if (refusals.isEmpty()) {
                MessageLine.done("Order " + recordedOrder.orderNo() + " is now "
                        + standing.code().replace('_', ' ') + ". The cases it affects were reassessed.");
            } else {
                MessageLine.refused("Not saved. " + refusals.get(0).words());
            }
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused(String.valueOf(e.getMessage()));
        }
        show();
    }

    static Map<String, String> standings() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Status standing : Status.values()) {
            words.put(standing.code(), standing.code().replace('_', ' '));
        }
        return words;
    }
}
