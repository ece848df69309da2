package org.proviso.intake.desk;

import org.proviso.core.EnvelopeNumber;

/** An envelope found by number, receipt or name; the voter as keyed, empty where nothing is keyed yet. */
public record FoundEnvelope(EnvelopeNumber envelopeNo, String receiptNo, String voter, String votingLocation) {}
