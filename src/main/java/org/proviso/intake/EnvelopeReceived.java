package org.proviso.intake;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** An envelope came into the office; nothing of its affirmation is keyed. Heard in the transaction that records it. */
public record EnvelopeReceived(ElectionId electionId, EnvelopeNumber envelopeNo) {}
