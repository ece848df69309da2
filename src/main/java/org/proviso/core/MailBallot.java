package org.proviso.core;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the mail-ballot office knows of one ballot it sent a voter; a reissued ballot has a serial of its own. */
public record MailBallot(
        VoterId voterId,
        String serial,
        @Nullable LocalDate issuedOn,
        State state,
        @Nullable LocalDate stateOn) {

    /** The state of a mail ballot. */
    public enum State implements Code {
        OUTSTANDING,
        RETURNED,
        ACCEPTED,
        REJECTED,
        SURRENDERED,
        LATE,
        VOID,
        CURE_PENDING,
        UNDELIVERABLE
    }
}
