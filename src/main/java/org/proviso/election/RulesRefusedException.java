package org.proviso.election;

/** A ruling or a rule pack cannot be put in force as it is; the message says why in words for the supervisor. */
public final class RulesRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public RulesRefusedException(String why) {
        super(why);
    }
}
