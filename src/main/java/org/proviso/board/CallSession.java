package org.proviso.board;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import org.proviso.core.ElectionId;

/** Calls a session of a body for a time on the county's clock. */
public record CallSession(
        @NotNull ElectionId electionId,
        @NotNull BodyKind body,
        @NotNull LocalDateTime calledFor,
        @NotNull @Size(max = 300) String place) {}
