package org.proviso.review.queue;

/** Why a case has its place in the queue. The first three are handed out as the next case; the others wait for someone. */
public enum QueueReason {
    CURE(1, "voter deadline"),
    CHANGED(2, "new information"),
    IN_TURN(5, "in order received"),
    VOTER(8, "waiting for the voter");

    private final int rank;
    private final String words;

    QueueReason(int rank, String words) {
        this.rank = rank;
        this.words = words;
    }

    int rank() {
        return rank;
    }

    public String words() {
        return words;
    }

    static QueueReason of(int rank) {
        for (QueueReason turn : values()) {
            if (turn.rank == rank) {
                return turn;
            }
        }
        throw new IllegalArgumentException("no turn has the rank " + rank);
    }
}
