package org.proviso.intake.desk;

import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;

/** An envelope found by number, receipt or name; the voter as keyed, empty where nothing is keyed yet. */
public record FoundEnvelope(
        EnvelopeNumber envelopeNo, @Nullable ReceiptNumber receiptNo, String voter, String votingLocation) {}
