package org.proviso.intake;

/** What was brought cannot be taken as it was keyed; the message says why in words for whoever keyed it. */
public final class IntakeRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public IntakeRefusedException(String why) {
        super(why);
    }
}
