package org.proviso.notices;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import org.proviso.core.EnvelopeKey;

/** That a voter was told, or that somebody tried: {@code sentAt} is when, on the county's clock. */
public record LogNoticeSent(
        @NotNull EnvelopeKey key,
        int noticeNo,
        int version,
        @NotNull NoticeChannel channel,
        @NotNull LocalDateTime sentAt) {}
