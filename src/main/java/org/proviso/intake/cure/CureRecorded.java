package org.proviso.intake.cure;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** A voter brought something and it was recorded; heard in the transaction that records it. */
public record CureRecorded(ElectionId electionId, EnvelopeNumber envelopeNo) {}
