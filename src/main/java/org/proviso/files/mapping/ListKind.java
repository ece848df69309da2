package org.proviso.files.mapping;

import org.proviso.core.Code;

/** A list that an office may bring in columns of its own. */
public enum ListKind implements Code {
    ROLL,
    MAIL_BALLOTS,
    CHECK_INS,
    VOTED_ELSEWHERE,
    STREETS,
    PRECINCTS,
    BALLOT_STYLES,
    CONTESTS,
    TRANSMITTALS,
    ENVELOPES;

    /** The name of the list's file in an election folder. */
    public String file() {
        return code().replace('_', '-') + ".csv";
    }
}
