package org.proviso.intake;

import java.util.List;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;

/**
 * What files that came after the election was loaded hold, beside what the office has: what is new, what is there already,
 * and what is there under the same number and says something else. Only what is new is loaded.
 */
public record LaterFiles(
        List<Envelope> envelopes,
        List<Transmittal> transmittals,
        List<EnvelopeNumber> there,
        List<EnvelopeNumber> thereOtherwise,
        int returnsThere,
        List<String> returnsThereOtherwise,
        List<String> warnings) {

    /** Whether nothing in the files is new. */
    public boolean isNothingNew() {
        return envelopes.isEmpty() && transmittals.isEmpty();
    }
}
