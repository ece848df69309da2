package org.proviso.review;

import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/** A case that waits for the decider: what is proposed, who read it again and agreed (null where nobody had to). */
public record ReadyCase(Proposal proposal, @Nullable UserName secondReadBy, int version) {}
