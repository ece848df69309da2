package org.proviso.review;

import org.jspecify.annotations.Nullable;

/** A proposal, and who read it again and agreed (null where nobody did). */
public record ReadProposal(Proposal proposal, @Nullable String secondReadBy) {}
