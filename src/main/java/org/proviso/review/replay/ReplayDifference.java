package org.proviso.review.replay;

import org.proviso.core.adjudication.kept.Way;

/** An assessment that does not come out again as it is kept, and why; no personal data is in it. */
public record ReplayDifference(String envelopeNo, int number, Way way, String why) {}
