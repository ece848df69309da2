package org.proviso.status;

import java.time.Instant;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.Reason;

/**
 * One line of the look-up. Both hashes are under the office's secret: of receipt number and birth date, by which it is
 * found, and of the receipt number alone, by which an old one is removed.
 */
record StatusLine(
        String keyHash,
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
        return since(changedAt).equals(other.since(changedAt));
    }

    StatusLine since(Instant moment) {
        return new StatusLine(
                keyHash, receiptHash, electionId, state, reasons, asks, arrival, registrationFound, moment);
    }
}
