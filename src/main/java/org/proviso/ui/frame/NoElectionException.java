package org.proviso.ui.frame;

/** A page about an election was opened in an office that holds none. */
public final class NoElectionException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NoElectionException() {
        super("There is no election here yet. The supervisor loads one in Set-up; in a demonstration the"
                + " sample is being loaded, so look again in a minute.");
    }
}
