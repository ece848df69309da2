package org.proviso.core.matching;

/** A candidate with its probability. */
record WeighedCandidate(VoterComparison pair, double probability) {}
