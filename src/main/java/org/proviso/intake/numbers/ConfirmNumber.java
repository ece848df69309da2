package org.proviso.intake.numbers;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/** The number of an envelope is confirmed as it is, with the other envelopes that stood on the screen beside it. */
public record ConfirmNumber(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @NotNull NumberMark mark,
        @NotNull List<@NotNull String> alsoOn,
        @NotBlank @Size(max = 1000) String because) {}
