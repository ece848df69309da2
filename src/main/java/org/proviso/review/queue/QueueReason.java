package org.proviso.review.queue;

/** Why a case comes when it comes. The first three are given to whoever takes the next one; the others wait for somebody. */
public enum QueueReason {
    CURE(1, "the voter's time is running"),
    CHANGED(2, "something new came in"),
    IN_TURN(5, "in its turn"),
    SECOND_LOOK(7, "waits for a second look at the signature"),
    VOTER(8, "waits for the voter");

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
