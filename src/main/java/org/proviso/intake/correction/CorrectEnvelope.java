package org.proviso.intake.correction;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;

/**
 * An envelope as it should have been received and keyed, whole, and what the paper shows; the version is that of the
 * envelope as it was seen. What was keyed is null where it stays as it is, or is still to be keyed.
 */
public record CorrectEnvelope(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @PositiveOrZero int version,
        @NotNull @Valid CorrectedCast cast,
        @Nullable @Valid KeyedAffirmation affirmation,
        @Nullable @Valid KeyedHandling handling,
        @NotBlank @Size(max = 1000) String because) {}
