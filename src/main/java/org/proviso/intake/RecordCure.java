package org.proviso.intake;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Ask;

/**
 * What the voter of an envelope brought after casting the ballot. {@code receivedAt} is what the stamp says, on the
 * county's clock: it alone decides whether the voter was in time.
 */
public record RecordCure(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @NotNull Ask ask,
        @NotNull LocalDateTime receivedAt,
        @NotBlank @Size(max = 2000) String words) {}
