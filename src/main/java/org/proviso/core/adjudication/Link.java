package org.proviso.core.adjudication;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Identity;

/**
 * How an envelope stands to the roll: the pairing a person confirmed, the one the match presumes, or none. The voter
 * id is null where there is none; {@code likeness} is the match in words with the figure behind it.
 */
public record Link(Identity identity, @Nullable String voterId, double probability, List<String> likeness) {

    /** The link with a person's word on it. */
    public Link confirmed() {
        return new Link(Identity.CONFIRMED, voterId, probability, likeness);
    }

    /** Whether a person has settled who the voter is. */
    public boolean isSettled() {
        return identity == Identity.CONFIRMED || identity == Identity.NOT_ON_ROLL;
    }
}
