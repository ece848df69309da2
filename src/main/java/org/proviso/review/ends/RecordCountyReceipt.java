package org.proviso.review.ends;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;

/**
 * What the other county said of an envelope it received: the day (null where it is missing), who received it, and the
 * number it gave it, which may be empty.
 */
public record RecordCountyReceipt(
        @NotNull EnvelopeKey key,
        int version,
        @Nullable LocalDate receivedOn,
        @NotNull @Size(max = 200) String receivedBy,
        @NotNull @Size(max = 200) String countyReference) {}
