package org.proviso.board;

/** Which motion of a session, numbered from 1. */
public record MotionKey(SessionKey session, int motionNo) {

    /** As the ledger names it. */
    public String subject() {
        return session.subject() + "/motion-" + motionNo;
    }
}
