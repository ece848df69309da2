package org.proviso.notices;

import org.proviso.access.Permission;
import org.proviso.core.Code;

/** What a notice is about. */
public enum NoticeKind implements Code {
    /** What the voter may still bring. */
    ASK(Permission.PRINT_CURE_LETTERS),
    /** How the envelope was decided. */
    OUTCOME(Permission.PRINT_OUTCOME_LETTERS);

    private final Permission printing;

    NoticeKind(Permission printing) {
        this.printing = printing;
    }

    /** The act of whoever prints and logs such a notice. */
    Permission printing() {
        return printing;
    }
}
