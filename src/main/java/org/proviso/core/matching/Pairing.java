package org.proviso.core.matching;

/** An envelope with its best candidate; no voter (an empty id, probability 0) where none came near. */
public record Pairing(String envelopeNo, String voterId, double probability, Verdict verdict) {}
