package org.proviso.intake.numbers;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** An envelope now has another receipt number, or none; heard in the transaction that records it. */
public record ReceiptCorrected(ElectionId electionId, EnvelopeNumber envelopeNo) {}
