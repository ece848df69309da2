package org.proviso.core;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A court's order, typed: what it directs, which court, its date and scope. An order about named envelopes lists
 * them; an order that extended hours says until when (local to the county).
 */
public record CourtOrder(
        Kind kind,
        String court,
        @Nullable LocalDate date,
        String scope,
        Status standing,
        @Nullable LocalDateTime until,
        Set<EnvelopeNumber> envelopeNos) {

    /** What the court directs. */
    public enum Kind implements Code {
        EXTEND,
        OPEN,
        COUNT,
        REJECT,
        HOLD,
        PRESERVE
    }

    /** Whether the order still stands. */
    public enum Status implements Code {
        PENDING,
        IN_FORCE,
        SET_ASIDE,
        FINAL
    }

    /** Whether it binds now. */
    public boolean binds() {
        return standing == Status.IN_FORCE || standing == Status.FINAL;
    }

    /**
     * Whether it is about this envelope. One that names no envelope is about all of them if it extends hours, holds or
     * preserves; what is to be opened, counted or rejected has to be named.
     */
    public boolean isAbout(EnvelopeNumber envelopeNo) {
        return envelopeNos.contains(envelopeNo)
                || (envelopeNos.isEmpty() && (kind == Kind.EXTEND || kind == Kind.HOLD || kind == Kind.PRESERVE));
    }

    /** Whether it binds now and keeps this envelope closed. */
    public boolean keepsClosed(EnvelopeNumber envelopeNo) {
        return (kind == Kind.HOLD || kind == Kind.PRESERVE) && binds() && isAbout(envelopeNo);
    }

    /** Whether it binds now and says itself how this envelope is settled: to count it or to reject it. */
    public boolean settles(EnvelopeNumber envelopeNo) {
        return (kind == Kind.COUNT || kind == Kind.REJECT) && binds() && isAbout(envelopeNo);
    }
}
