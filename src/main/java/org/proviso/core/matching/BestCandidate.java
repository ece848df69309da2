package org.proviso.core.matching;

/** An envelope with its best candidate; no voter (an empty id, probability 0) where none came near. */
public record BestCandidate(String envelopeNo, String voterId, double probability, MatchVerdict verdict) {}
