package org.proviso.core.adjudication.finding;

import java.util.List;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Kind;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.facts.OrderFact;

/**
 * What courts ordered about one envelope. Only an order in force or final binds; one that is pending or was set aside
 * is shown as evidence and binds nobody. An order to hold or to preserve that names no envelope is about every one; an
 * order to open, count or reject is about those it names alone.
 */
final class CourtOrderFactFinder {

    /** What holds an envelope back goes before what lets it through, until a person enters that the hold has ended. */
    private static final List<Kind> PRECEDENCE = List.of(Kind.HOLD, Kind.REJECT, Kind.COUNT, Kind.OPEN, Kind.PRESERVE);

    private CourtOrderFactFinder() {}

    static Finding findFacts(Envelope envelope, Election election) {
        List<CourtOrder> about = election.orders().stream()
                .filter(order -> order.kind() != Kind.EXTEND && order.isAbout(envelope.envelopeNo()))
                .toList();
        Evidence[] evidence = about.stream()
                .map(order -> Evidence.of(EvidenceSource.COURT, words(order)))
                .toArray(Evidence[]::new);
        List<Kind> binding = about.stream()
                .filter(CourtOrder::binds)
                .map(CourtOrder::kind)
                .distinct()
                .toList();
        if (binding.contains(Kind.COUNT) && binding.contains(Kind.REJECT)) {
            return Finding.unknown(evidence);
        }
        return PRECEDENCE.stream()
                .filter(binding::contains)
                .findFirst()
                .map(kind -> Finding.of(OrderFact.valueOf(kind.name()), evidence))
                .orElseGet(() -> Finding.of(OrderFact.NONE, evidence));
    }

    private static String words(CourtOrder order) {
        String words = order.court() + ", " + DateWords.date(order.date()) + ": " + order.scope();
        return order.binds()
                ? words
                : words + " (" + DateWords.code(order.standing().code()) + ", so it is not binding)";
    }
}
