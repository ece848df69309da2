package org.proviso.core.matching;

/** Bits of evidence that the voter, and that a relative of the voter, cast the envelope. */
record Score(Comparison pair, double ownBits, double kinBits) {}
