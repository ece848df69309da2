package org.proviso.access;

import org.proviso.core.Code;

/** A part that a person plays in the office; a small office may give one person several of the casework roles. */
public enum Role implements Code {
    INTAKE,
    REVIEWER,
    DECIDER,
    /** Keeps the record of a session; has no vote and no case work. */
    SECRETARY,
    RELEASE_TEAM,
    SUPERVISOR,
    /** Gives and takes roles, and has no part in any case. */
    ADMINISTRATOR,
    OBSERVER,
    /** Whoever has not signed in; nobody is given this role. */
    PUBLIC;

    /** Whether its acts are about cases. */
    public boolean isCasework() {
        return ordinal() <= SUPERVISOR.ordinal();
    }
}
