package org.proviso.review.ends;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;

/**
 * An envelope that is sent on: to which county and when (empty and null where that was done before a second person
 * confirmed it), and the receipt from there (null and empty while there is none).
 */
public record SentOnEnvelope(
        EnvelopeKey key,
        String toCounty,
        @Nullable Instant sentAt,
        @Nullable LocalDate receivedOn,
        String receivedBy,
        String countyReference) {

    /** Whether the other county said that it has the envelope. */
    public boolean hasReceipt() {
        return receivedOn != null;
    }
}
