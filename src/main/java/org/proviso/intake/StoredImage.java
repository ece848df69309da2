package org.proviso.intake;

/** A picture as it was loaded: what kind it is, the SHA-256 of its bytes, and the bytes. */
@SuppressWarnings("ArrayRecordComponent") // Two pictures are told apart by their hash, never by this record.
public record StoredImage(String mediaType, String sha256, byte[] content) {}
