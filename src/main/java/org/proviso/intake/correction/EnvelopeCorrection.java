package org.proviso.intake.correction;

import java.util.Map;

/** One correction of an envelope: the boxes that it changed as they read before and after, who made it and why. */
public record EnvelopeCorrection(
        int number, Map<String, String> was, Map<String, String> became, String because, String by) {}
