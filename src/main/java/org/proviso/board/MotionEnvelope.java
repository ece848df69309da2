package org.proviso.board;

/** An envelope of a motion: in the version of its case that the motion was made on, and whether it was pulled out. */
public record MotionEnvelope(String envelopeNo, int caseVersion, boolean pulledOut) {}
