package org.proviso.ledger;

import java.util.regex.Pattern;

/**
 * Who acted, by a pseudonym: observers can tell whether two acts were one person's, not whose. The office keeps the
 * list of who is behind which.
 */
public record Actor(String pseudonym) {

    private static final Pattern FORM = Pattern.compile("system|visitor|[a-z]+-[0-9A-Z]{6}");

    /** The program itself: a deadline that passed, the first start. */
    public static final Actor SYSTEM = new Actor("system");

    /** A person who has not signed in. */
    public static final Actor VISITOR = new Actor("visitor");

    public Actor {
        if (!FORM.matcher(pseudonym).matches()) {
            throw new IllegalArgumentException("an actor is written to the ledger by pseudonym, not as " + pseudonym);
        }
    }
}
