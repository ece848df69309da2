package org.proviso.intake.desk;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;

/**
 * An envelope in the list of intake. {@code waits} says that something of it is not yet keyed; {@code keyings} how often
 * it was keyed whole, by the files it came with or by hand; {@code differing} in how many boxes a second keying that
 * nobody settled yet reads otherwise.
 */
public record IntakeEnvelopeRow(
        EnvelopeNumber envelopeNo,
        @Nullable ReceiptNumber receiptNo,
        String votingLocation,
        @Nullable LocalDateTime receivedAt,
        boolean waits,
        int keyings,
        int differing) {

    /** Its keying state, in words. */
    public String keyed() {
        if (waits) {
            return "not keyed";
        }
        if (differing > 0) {
            return "keyings differ in " + differing + (differing == 1 ? " field" : " fields");
        }
        return keyings < 2 ? "keyed once" : "keyed twice";
    }
}
