package org.proviso.notices;

import org.proviso.access.Act;
import org.proviso.core.Code;

/** What a notice is about. */
public enum NoticeKind implements Code {
    /** What the voter may still bring. */
    ASK(Act.PRINT_CURE_LETTERS),
    /** How the envelope was decided. */
    OUTCOME(Act.PRINT_OUTCOME_LETTERS);

    private final Act printing;

    NoticeKind(Act printing) {
        this.printing = printing;
    }

    /** The act of whoever prints and logs such a notice. */
    Act printing() {
        return printing;
    }
}
