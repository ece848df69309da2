package org.proviso.core.deciding;

/** The votes cast for and against; abstentions are not votes cast. */
public record VoteTally(int yes, int no) {

    boolean isSilent() {
        return yes + no == 0;
    }

    /**
     * How a motion ends that needs this vote, in a body of so many members. Where every vote must agree, an even split has
     * failed.
     */
    MotionResult result(VoteNeeded needed, int members) {
        if (needed == VoteNeeded.UNANIMOUS) {
            return no == 0 ? MotionResult.CARRIED : MotionResult.FAILED;
        }
        if (yes == no) {
            return MotionResult.TIED;
        }
        boolean enough = needed == VoteNeeded.MAJORITY_OF_MEMBERS ? yes >= VoteNeeded.majority(members) : yes > no;
        return enough ? MotionResult.CARRIED : MotionResult.FAILED;
    }

    /** The same votes on the opposite motion. */
    VoteTally reversed() {
        return new VoteTally(no, yes);
    }

    String words() {
        return yes + " to " + no;
    }
}
