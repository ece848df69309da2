package org.proviso.review.ends;

import java.time.LocalDate;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.finding.DateWords;

/**
 * The other county's word that it received an envelope that was sent on: on which day, who received it there, and the
 * number it gave it (empty for none).
 */
public record CountyReceipt(
        EnvelopeKey key, int number, LocalDate receivedOn, String receivedBy, String countyReference) {

    /** As the office says it: {@code Envelope P-1012 was received there on 11/12/2026 by Jane Roe, number B-77.} */
    public String words() {
        return "Envelope " + key.envelopeNo() + " was received there on " + DateWords.date(receivedOn) + " by "
                + receivedBy + (countyReference.isEmpty() ? "" : ", number " + countyReference) + ".";
    }
}
