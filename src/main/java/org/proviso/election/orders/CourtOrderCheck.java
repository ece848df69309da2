package org.proviso.election.orders;

import java.util.Optional;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;

/** What a later room has against a new order before it is recorded; the room that has the envelopes implements it. */
public interface CourtOrderCheck {

    /** Why an order cannot name these envelopes; empty where it can. */
    Optional<Refusal> refusal(ElectionId electionId, Set<EnvelopeNumber> envelopeNos);
}
