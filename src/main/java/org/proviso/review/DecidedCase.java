package org.proviso.review;

/** A decision that stands, and where its case is since: decided, or released once its envelope was opened. */
public record DecidedCase(CaseKey key, CaseState state, int version, Decision decision) {}
