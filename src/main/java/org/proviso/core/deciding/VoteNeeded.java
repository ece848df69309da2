package org.proviso.core.deciding;

import org.proviso.core.Code;

/** The vote that carries a motion, by the words of the rule {@code decider.vote_to_reject}. */
enum VoteNeeded implements Code {
    /** The one person who decides. */
    ONE,
    /** More yes than no among the votes cast; an abstention is none (common practice). */
    MAJORITY,
    /**
     * No vote against. An abstention does not stand in the way when all the others agree (Code of Maryland Regulations
     * 33.16.05.03).
     */
    UNANIMOUS
}
