package org.proviso.intake.keying;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.PositiveOrZero;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/**
 * One person hands in what an envelope says. {@code draftVersion} is that of the own draft, 0 where there is none.
 * Whoever keys second and has seen the differences gives the version that {@link KeyingResult.KeyedTwice} came with:
 * what is handed in then stands.
 */
public record FinishKeying(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @PositiveOrZero int draftVersion,
        @NotNull @Valid KeyedAffirmation affirmation,
        @NotNull @Valid KeyedHandling handling,
        @Nullable Integer resolves) {}
