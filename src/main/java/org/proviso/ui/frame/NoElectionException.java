package org.proviso.ui.frame;

/** A page about an election was opened, but no election is loaded. */
public final class NoElectionException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NoElectionException() {
        super("No election has been loaded. A supervisor loads one in Setup. In a demonstration, the sample is"
                + " still loading. Check again in a minute.");
    }
}
