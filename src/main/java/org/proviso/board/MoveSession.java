package org.proviso.board;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;

/** Calls a session that is not open yet for another time on the county's clock, or another place. */
public record MoveSession(
        @NotNull SessionKey session,
        int version,
        @NotNull LocalDateTime calledFor,
        @NotNull @Size(max = 300) String place) {}
