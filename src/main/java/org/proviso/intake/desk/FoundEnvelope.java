package org.proviso.intake.desk;

/** An envelope found by number, receipt or name; the voter as keyed, empty where nothing is keyed yet. */
public record FoundEnvelope(String envelopeNo, String receiptNo, String voter, String votingLocation) {}
