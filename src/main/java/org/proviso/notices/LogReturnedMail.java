package org.proviso.notices;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import org.proviso.core.EnvelopeKey;

/** That what was sent came back, when on the county's clock. The voter still counts as told. */
public record LogReturnedMail(
        @NotNull EnvelopeKey key,
        int noticeNo,
        int version,
        int attemptNo,
        @NotNull LocalDateTime cameBackAt) {}
