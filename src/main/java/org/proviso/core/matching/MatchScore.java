package org.proviso.core.matching;

/** Bits of evidence that the voter, and that a relative of the voter, cast the envelope. */
record MatchScore(VoterComparison pair, double ownBits, double kinBits) {

    /** The same for a voter whose place comes after so many others. */
    MatchScore after(int others) {
        return new MatchScore(pair.after(others), ownBits, kinBits);
    }
}
