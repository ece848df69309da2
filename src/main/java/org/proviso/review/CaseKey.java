package org.proviso.review;

/** Which case: the envelope's number in one election. */
public record CaseKey(String electionId, String envelopeNo) implements Comparable<CaseKey> {

    /** The order in which several cases are locked, so that two acts never wait for each other. */
    @Override
    public int compareTo(CaseKey other) {
        int byElection = electionId.compareTo(other.electionId);
        return byElection != 0 ? byElection : envelopeNo.compareTo(other.envelopeNo);
    }
}
