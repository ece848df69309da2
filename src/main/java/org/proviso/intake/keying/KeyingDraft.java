package org.proviso.intake.keying;

import java.util.Map;
import org.proviso.core.EnvelopeNumber;

/** What one person typed of an envelope and saved; finished once it was handed in. The version goes with the next save. */
public record KeyingDraft(EnvelopeNumber envelopeNo, Map<String, String> boxes, boolean finished, int version) {}
