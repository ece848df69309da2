package org.proviso.core.deciding;

import java.util.Collection;
import org.proviso.core.Code;

/** How a motion ended. */
public enum MotionResult implements Code {
    CARRIED,
    FAILED,
    TIED,
    WITHDRAWN;

    /** Over all bodies: each must carry it; one in which it failed is enough for it to fail. */
    static MotionResult over(Collection<MotionResult> bodies) {
        if (bodies.contains(FAILED)) {
            return FAILED;
        }
        return bodies.contains(TIED) ? TIED : CARRIED;
    }
}
