package org.proviso.intake.cure;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** Cure evidence recorded by mistake counts no more; heard in the transaction that records it. */
public record CureTakenBack(ElectionId electionId, EnvelopeNumber envelopeNo) {}
