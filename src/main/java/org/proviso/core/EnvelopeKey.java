package org.proviso.core;

/** Which case: the envelope's number in one election. */
public record EnvelopeKey(ElectionId electionId, EnvelopeNumber envelopeNo) implements Comparable<EnvelopeKey> {

    /** The order in which several cases are locked, so that two acts never wait for each other. */
    @Override
    public int compareTo(EnvelopeKey other) {
        int byElection = electionId.compareTo(other.electionId);
        return byElection != 0 ? byElection : envelopeNo.compareTo(other.envelopeNo);
    }
}
