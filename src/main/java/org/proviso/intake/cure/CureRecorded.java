package org.proviso.intake.cure;

/** A voter brought something and it was recorded; heard in the transaction that records it. */
public record CureRecorded(String electionId, String envelopeNo) {}
