package org.proviso.election;

/** A folder cannot be loaded as it is; the message says why in words for the supervisor. */
public final class ElectionRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ElectionRefusedException(String why) {
        super(why);
    }
}
