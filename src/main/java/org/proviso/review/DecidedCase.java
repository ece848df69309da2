package org.proviso.review;

import org.proviso.core.EnvelopeKey;

/** A decision that stands, and where its case is since: decided, or released once its envelope was opened. */
public record DecidedCase(EnvelopeKey key, CaseState state, int version, Decision decision) {}
