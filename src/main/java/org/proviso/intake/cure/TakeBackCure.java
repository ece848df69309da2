package org.proviso.intake.cure;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** Cure evidence that was recorded by mistake, by its number among that of its envelope, and why it is taken back. */
public record TakeBackCure(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @Positive int cureNo,
        @NotBlank @Size(max = 1000) String because) {}
