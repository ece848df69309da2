package org.proviso.review.facts;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;

/** One reviewer's look at the signature; finding it different needs a note of what differs. */
public record SignatureComparison(
        @NotNull EnvelopeKey key,
        int version,
        @NotNull Finding seen,
        @NotNull @Size(max = 4000) String note) {

    /** What the look found. */
    public enum Finding implements Code {
        AGREES,
        DIFFERS,
        NO_EXEMPLAR
    }
}
