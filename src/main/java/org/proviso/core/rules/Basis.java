package org.proviso.core.rules;

import org.proviso.core.Code;

/**
 * How a value of a rule pack is known. Nobody's vote may be rejected or cut on {@code MEMORY} or {@code UNKNOWN}
 * until the office has signed a county ruling, which makes the value {@code RULED} for that election.
 */
public enum Basis implements Code {
    /** The text of the source was read. */
    READ,
    /** Recalled, not read. */
    MEMORY,
    /** No source was found. */
    UNKNOWN,
    /** Confirmed or given by the office's signed county ruling. */
    RULED,
    /** Law of an invented state, for samples; allowed only in a pack that calls itself illustrative. */
    INVENTED;

    /** Whether a rejection or a partial count may rest on it. */
    public boolean isFirm() {
        return this == READ || this == RULED || this == INVENTED;
    }
}
