package org.proviso.board;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;

/** Calls a session of a body for a time on the county's clock. */
public record CallSession(
        @NotBlank String electionId,
        @NotNull BodyKind body,
        @NotNull LocalDateTime calledFor,
        @NotNull @Size(max = 300) String place) {}
