package org.proviso.board;

import org.proviso.core.EnvelopeNumber;

/** An envelope of a motion: in the version of its case that the motion was made on, and whether it was pulled out. */
public record MotionEnvelope(EnvelopeNumber envelopeNo, int caseVersion, boolean pulledOut) {}
