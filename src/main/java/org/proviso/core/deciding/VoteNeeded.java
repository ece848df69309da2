package org.proviso.core.deciding;

import org.proviso.core.Code;

/**
 * The vote that carries a motion, by the words of the rules {@code decider.vote_to_reject} and {@code decider.vote_to_count}.
 * Their word {@code majority} alone does not say of what: {@link VotingRules} does.
 */
enum VoteNeeded implements Code {
    /** The one person who decides. */
    ONE,
    /** More yes than no among the votes cast; an abstention is none. */
    MAJORITY_OF_VOTES_CAST,
    /** Yes from more than half of the members that the body has, present or not. */
    MAJORITY_OF_MEMBERS,
    /**
     * No vote against. An abstention does not stand in the way when all the others agree (Code of Maryland Regulations
     * 33.16.05.03).
     */
    UNANIMOUS;

    /** As it is said after {@code To reject:}, of a body of so many. */
    String words(int members) {
        return switch (this) {
            case ONE -> "one vote";
            case MAJORITY_OF_VOTES_CAST -> "a majority of the votes cast";
            case MAJORITY_OF_MEMBERS -> majority(members) + " of " + members + " members";
            case UNANIMOUS -> "no vote against";
        };
    }

    static int majority(int members) {
        return members / 2 + 1;
    }
}
