package org.proviso.core.matching;

/** A candidate with its probability. */
record Standing(Comparison pair, double probability) {}
