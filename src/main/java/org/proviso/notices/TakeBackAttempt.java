package org.proviso.notices;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import org.proviso.core.EnvelopeKey;

/**
 * An attempt to notify a voter, or its returned mail, that was logged by mistake, and why it is taken back; the version is
 * that of the notice as it was seen.
 */
public record TakeBackAttempt(
        @NotNull EnvelopeKey key,
        @Positive int noticeNo,
        @PositiveOrZero int version,
        @Positive int attemptNo,
        @NotBlank @Size(max = 1000) String because) {}
