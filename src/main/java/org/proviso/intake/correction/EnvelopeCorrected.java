package org.proviso.intake.correction;

import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;

/** An envelope reads otherwise than it was received or keyed; heard in the transaction that records it. */
public record EnvelopeCorrected(ElectionId electionId, EnvelopeNumber envelopeNo, Envelope before) {}
