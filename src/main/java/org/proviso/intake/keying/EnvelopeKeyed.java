package org.proviso.intake.keying;

/** What an envelope says was keyed, or keyed otherwise a second time; heard in the transaction that records it. */
public record EnvelopeKeyed(String electionId, String envelopeNo) {}
