package org.proviso.status;

import java.time.Instant;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.Reason;

/**
 * One line of the look-up. Its hashes are under the office's secret: of receipt number and birth date, by which it is
 * found; of the envelope, by which an old one is removed; and of the receipt number alone, by which the envelopes that
 * share one are found.
 */
record StatusLine(
        String keyHash,
        String envelopeHash,
        String receiptHash,
        ElectionId electionId,
        VoterCaseState state,
        List<Reason> reasons,
        List<VoterAsk> asks,
        Arrival arrival,
        boolean registrationFound,
        Instant changedAt) {

    /** The same to the voter, whenever it was written. */
    boolean saysTheSame(StatusLine other) {
        return new StatusLine(
                        other.keyHash,
                        other.envelopeHash,
                        other.receiptHash,
                        electionId,
                        state,
                        reasons,
                        asks,
                        arrival,
                        registrationFound,
                        other.changedAt)
                .equals(other);
    }

    StatusLine since(Instant moment) {
        return new StatusLine(
                keyHash,
                envelopeHash,
                receiptHash,
                electionId,
                state,
                reasons,
                asks,
                arrival,
                registrationFound,
                moment);
    }
}
