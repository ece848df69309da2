package org.proviso.core.deciding;

import org.proviso.core.Code;

/** Who decides, by the words of the rule {@code decider.kind}. */
public enum DeciderKind implements Code {
    OFFICIAL,
    BOARD,
    TWO_BODIES;

    /** How many bodies vote on a motion. */
    public int bodies() {
        return this == TWO_BODIES ? 2 : 1;
    }
}
