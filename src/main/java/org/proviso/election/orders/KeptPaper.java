package org.proviso.election.orders;

/** A scan as it is kept: what kind of file it is, the SHA-256 of its bytes, and the bytes. */
@SuppressWarnings("ArrayRecordComponent") // Two scans are told apart by their hash, never by this record.
public record KeptPaper(String mediaType, String sha256, byte[] content) {}
