package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Paragraph;
import org.proviso.core.CourtOrder;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.RecordedCourtOrder;

/** Enters a court's order about one envelope. The order settles the case in place of the decider's vote. */
final class CourtOrderSheet extends CaseSheet {

    CourtOrderSheet(CasePageContext desk, RecordedCourtOrder recorded) {
        super(
                "Enter the court order for envelope " + desk.number(),
                "Enter court order",
                refusing -> desk.fromSheet(
                        refusing,
                        "Envelope " + desk.number() + " decided by court order: " + outcome(recorded.order()) + ".",
                        seen -> desk.acts().ordered().settle(seen.key(), seen.version(), recorded.orderNo())));
        CourtOrder order = recorded.order();
        with(new Paragraph(order.court() + ", order of " + DateWords.date(order.date()) + ": " + outcome(order)
                + " this envelope." + (order.scope().isBlank() ? "" : " " + order.scope())));
        with(
                "You enter what the court decided; no vote is taken here. The voter is told, with the order as the reason.");
    }

    private static String outcome(CourtOrder order) {
        return order.kind() == CourtOrder.Kind.COUNT ? "count" : "reject";
    }
}
