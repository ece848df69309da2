package org.proviso.review;

import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/** A proposal, and who read it again and agreed (null where nobody did). */
public record ReadProposal(Proposal proposal, @Nullable UserName secondReadBy) {}
