package org.proviso.intake;

/** An envelope came into the office; nothing of its affirmation is keyed. Heard in the transaction that records it. */
public record EnvelopeReceived(String electionId, String envelopeNo) {}
