package org.proviso.notices;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A notice still to be sent, with its clocks (the county's): until when the voter may act (null for an outcome, or where
 * no deadline can be told), whether the notice is overdue, and whether the voter's time ran out before it was sent. Then
 * whom it goes to and in which language; phone and email are as the voter gave them, empty where not.
 */
public record DueNotice(
        Notice notice,
        @Nullable LocalDateTime until,
        boolean overdue,
        boolean timeIsUp,
        MailTo to,
        String language,
        String phone,
        String email) {}
