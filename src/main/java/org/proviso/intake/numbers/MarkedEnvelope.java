package org.proviso.intake.numbers;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;

/**
 * An envelope whose receipt number is missing, or of which a number is on other envelopes too, as a person reads those.
 * {@code confirmed} is why somebody confirmed it as it is; null while nobody did, or once yet another envelope has the
 * number. The version goes with a correction.
 */
public record MarkedEnvelope(
        EnvelopeNumber envelopeNo,
        NumberMark mark,
        List<String> alsoOn,
        @Nullable ReceiptNumber receiptNo,
        String votingLocation,
        int version,
        @Nullable String confirmed) {

    public boolean isSettled() {
        return confirmed != null;
    }

    /** The mark in words. */
    public String words() {
        return mark.words(alsoOn);
    }
}
