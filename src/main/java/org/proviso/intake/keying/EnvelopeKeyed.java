package org.proviso.intake.keying;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** What an envelope says was keyed, or keyed otherwise a second time; heard in the transaction that records it. */
public record EnvelopeKeyed(ElectionId electionId, EnvelopeNumber envelopeNo) {}
