package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Status;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.facts.VoteTimeFact;

/** Was the ballot cast while the polls were open, in line at the close, or in hours that a court extended? */
final class VoteTimeFactFinder {

    private static final List<Status> STRONGEST_FIRST =
            List.of(Status.FINAL, Status.IN_FORCE, Status.PENDING, Status.SET_ASIDE);

    private final Envelope.Cast cast;
    private final Election election;
    private final EnvelopeNumber envelopeNo;

    private VoteTimeFactFinder(Envelope envelope, Election election) {
        this.cast = envelope.cast();
        this.envelopeNo = envelope.envelopeNo();
        this.election = election;
    }

    static Finding findFacts(Envelope envelope, Election election) {
        if (envelope.source() == Envelope.Source.MAIL_WITHOUT_ID) {
            return found(VoteTimeFact.WITHIN_HOURS, "A mail ballot received without identification.");
        }
        return new VoteTimeFactFinder(envelope, election).find();
    }

    private Finding find() {
        LocalDateTime close = election.close();
        if (cast.inLineAtClose().isYes()) {
            return found(VoteTimeFact.IN_LINE_AT_CLOSE, "The voter was in line when the polls closed.");
        }
        if (cast.extendedHours().isYes()) {
            return extended();
        }
        LocalDateTime at = cast.at();
        if (at == null) {
            return Finding.unknown(Evidence.of(EvidenceSource.ENVELOPE, "The envelope does not say when it was cast."));
        }
        if (!at.isAfter(close)) {
            return found(VoteTimeFact.WITHIN_HOURS, "Cast at " + DateWords.hour(at) + ".");
        }
        return afterClose(at, close);
    }

    private Finding afterClose(LocalDateTime at, LocalDateTime close) {
        String when = "Cast at " + DateWords.hour(at) + ", after polls closed at " + DateWords.hour(close);
        if (order().isPresent()) {
            return extended();
        }
        return cast.inLineAtClose().isNo()
                ? found(VoteTimeFact.AFTER_CLOSE, when + "; the voter was not in line by then.")
                : Finding.unknown(Evidence.of(
                        EvidenceSource.ENVELOPE,
                        when + "; the record does not say whether the voter was in line by then."));
    }

    private Finding extended() {
        Optional<CourtOrder> order = order();
        if (order.isEmpty()) {
            return Finding.unknown(Evidence.of(
                    EvidenceSource.ENVELOPE,
                    "Marked as cast in extended hours, but no court order extending hours is on file."));
        }
        LocalDateTime until = order.get().until();
        String words = order.get().court() + ", " + DateWords.date(order.get().date()) + ", extended voting hours"
                + (until == null ? "" : " to " + DateWords.hour(until)) + ".";
        if (cast.at() != null && until != null && cast.at().isAfter(until)) {
            return found(
                    VoteTimeFact.AFTER_CLOSE, words + " This ballot was cast at " + DateWords.hour(cast.at()) + ".");
        }
        return new Finding(
                Set.of(VoteTimeFact.valueOf("EXTENDED_" + order.get().standing().name())),
                List.of(Evidence.of(EvidenceSource.COURT, words)));
    }

    /** The order that decides; one that stands goes before one that is pending, and that before one set aside. */
    private Optional<CourtOrder> order() {
        return election.orders().stream()
                .filter(order -> order.kind() == CourtOrder.Kind.EXTEND && order.isAbout(envelopeNo))
                .min(Comparator.comparing(order -> STRONGEST_FIRST.indexOf(order.standing())));
    }

    private static Finding found(VoteTimeFact word, String words) {
        return Finding.of(word, Evidence.of(EvidenceSource.ENVELOPE, words));
    }
}
