package org.proviso.access;

/** An account cannot be made or changed this way; the message says why in words for the administrator. */
public final class UserRuleException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    UserRuleException(String why) {
        super(why);
    }
}
