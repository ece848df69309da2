package org.proviso.board;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** A member stands aside on an envelope of the agenda. */
public record RecordRecusal(
        @NotNull SessionKey session,
        @NotBlank String envelopeNo,
        @NotBlank String userName,
        @NotBlank @Size(max = 4000) String ground) {}
