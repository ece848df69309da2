package org.proviso.election.orders;

import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/**
 * A court's order was recorded, or the standing of one on file changed; heard in the
 * transaction that records it. The set has the envelopes that the order names; an empty set means that it may concern
 * every envelope.
 */
public record CourtOrderRecorded(ElectionId electionId, int orderNo, Set<EnvelopeNumber> envelopeNos) {}
