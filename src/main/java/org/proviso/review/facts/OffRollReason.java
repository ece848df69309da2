package org.proviso.review.facts;

import org.proviso.core.Code;

/** Why an envelope's voter is a person of their own and no record of the roll. */
public enum OffRollReason implements Code {
    /** Registered on the day, and not yet in the file. */
    SAME_DAY,
    /** Votes on an affidavit where the law asks for no registration. */
    AFFIDAVIT,
    /** Searched for and not found. */
    NOT_ON_THE_ROLL
}
