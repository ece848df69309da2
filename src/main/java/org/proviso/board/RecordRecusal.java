package org.proviso.board;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;

/** A member is recused from an envelope of the agenda. */
public record RecordRecusal(
        @NotNull SessionKey session,
        @NotNull EnvelopeNumber envelopeNo,
        @NotNull UserName userName,
        @NotBlank @Size(max = 4000) String ground) {}
