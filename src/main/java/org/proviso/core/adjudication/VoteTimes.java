package org.proviso.core.adjudication;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Standing;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.facts.VoteTime;

/** Was the ballot cast while the polls were open, in line at the close, or in hours that a court extended? */
final class VoteTimes {

    private static final List<Standing> STRONGEST_FIRST =
            List.of(Standing.FINAL, Standing.IN_FORCE, Standing.PENDING, Standing.SET_ASIDE);

    private final Envelope.Cast cast;
    private final Election election;
    private final String envelopeNo;

    private VoteTimes(Envelope envelope, Election election) {
        this.cast = envelope.cast();
        this.envelopeNo = envelope.envelopeNo();
        this.election = election;
    }

    static Finding of(Envelope envelope, Election election) {
        if (envelope.source() == Envelope.Source.MAIL_WITHOUT_ID) {
            return found(VoteTime.WITHIN_HOURS, "A mail ballot that came without identification.");
        }
        return new VoteTimes(envelope, election).find();
    }

    private Finding find() {
        LocalDateTime close = election.date().atTime(election.pollsClose());
        if (cast.inLineAtClose().isYes()) {
            return found(VoteTime.IN_LINE_AT_CLOSE, "The voter was in line when the polls closed.");
        }
        if (cast.extendedHours().isYes()) {
            return extended();
        }
        LocalDateTime at = cast.at();
        if (at == null) {
            return Finding.unknown(Evidence.of(Source.ENVELOPE, "The envelope does not say when it was cast."));
        }
        if (!at.isAfter(close)) {
            return found(VoteTime.WITHIN_HOURS, "Cast at " + Words.hour(at) + ".");
        }
        return afterClose(at, close);
    }

    private Finding afterClose(LocalDateTime at, LocalDateTime close) {
        String when = "Cast at " + Words.hour(at) + ", after the close at " + Words.hour(close);
        if (order().isPresent()) {
            return extended();
        }
        return cast.inLineAtClose().isNo()
                ? found(VoteTime.AFTER_CLOSE, when + ", by a voter not in line by then.")
                : Finding.unknown(
                        Evidence.of(Source.ENVELOPE, when + "; nobody noted whether the voter was in line by then."));
    }

    private Finding extended() {
        Optional<CourtOrder> order = order();
        if (order.isEmpty()) {
            return Finding.unknown(Evidence.of(
                    Source.ENVELOPE, "Marked as cast in extended hours, but no order that extended them is on file."));
        }
        LocalDateTime until = order.get().until();
        String words = order.get().court() + ", " + Words.date(order.get().date()) + ", extended the hours"
                + (until == null ? "" : " to " + Words.hour(until)) + ".";
        if (cast.at() != null && until != null && cast.at().isAfter(until)) {
            return found(VoteTime.AFTER_CLOSE, words + " This ballot was cast at " + Words.hour(cast.at()) + ".");
        }
        return new Finding(
                Set.of(VoteTime.valueOf("EXTENDED_" + order.get().standing().name())),
                List.of(Evidence.of(Source.COURT, words)));
    }

    /** The order that decides; one that stands goes before one that is pending, and that before one set aside. */
    private Optional<CourtOrder> order() {
        return election.orders().stream()
                .filter(order -> order.kind() == CourtOrder.Kind.EXTEND)
                .filter(order ->
                        order.envelopeNos().isEmpty() || order.envelopeNos().contains(envelopeNo))
                .min(Comparator.comparing(order -> STRONGEST_FIRST.indexOf(order.standing())));
    }

    private static Finding found(VoteTime word, String words) {
        return Finding.of(word, Evidence.of(Source.ENVELOPE, words));
    }
}
