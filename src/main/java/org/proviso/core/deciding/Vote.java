package org.proviso.core.deciding;

import org.proviso.core.Code;

/** A member's vote on a motion, as it is recorded. */
public enum Vote implements Code {
    YES,
    NO,
    ABSTAINS,
    RECUSED
}
