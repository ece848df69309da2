package org.proviso.review.find;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/** What was found: envelopes by number, receipt or the name on them, and records of the roll with their envelopes. */
public record FindResult(List<EnvelopeHit> envelopes, List<VoterHit> voters) {

    /**
     * An envelope with the name written on it; {@code reasons} are the codes of why it was issued, joined by semicolons,
     * {@code holder} who has its case by full name, empty where nobody has.
     */
    public record EnvelopeHit(
            EnvelopeNumber envelopeNo,
            @Nullable ReceiptNumber receiptNo,
            String votingLocation,
            String precinct,
            String reasons,
            PersonName name,
            Recommendation outlook,
            CaseState state,
            String holder) {}

    /**
     * A record of the roll, whether it was found by the voter's former name only, and the numbers of the envelopes linked or
     * presumed linked to it.
     */
    public record VoterHit(Voter voter, boolean byFormerName, List<EnvelopeNumber> envelopeNos) {}

    public boolean isNothing() {
        return envelopes.isEmpty() && voters.isEmpty();
    }
}
