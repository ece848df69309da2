package org.proviso.review.replay;

import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.kept.AssessmentKind;

/** An assessment that does not come out again as it is kept, and why; no personal data is in it. */
public record ReplayDifference(EnvelopeNumber envelopeNo, int number, AssessmentKind way, String why) {}
