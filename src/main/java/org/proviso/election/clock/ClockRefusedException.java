package org.proviso.election.clock;

/** The office's clock cannot be moved so; the message says why in words for the supervisor. */
public final class ClockRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ClockRefusedException(String why) {
        super(why);
    }
}
