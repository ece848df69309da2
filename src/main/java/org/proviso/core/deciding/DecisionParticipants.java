package org.proviso.core.deciding;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/**
 * Who did what on the way to a decision, by user name: who proposed it and who read it a second time (null where nobody
 * has), and everyone who voted yes or no, or the official who decides.
 */
public record DecisionParticipants(
        @Nullable UserName proposedBy, @Nullable UserName secondReadBy, Set<UserName> decidedBy) {}
