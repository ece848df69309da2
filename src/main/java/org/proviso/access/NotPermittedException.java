package org.proviso.access;

import org.springframework.security.access.AccessDeniedException;

/** Somebody asked for an act that is not theirs to do; the message says why in words for that person. */
public final class NotPermittedException extends AccessDeniedException {

    private static final long serialVersionUID = 1L;

    NotPermittedException(String why) {
        super(why);
    }
}
