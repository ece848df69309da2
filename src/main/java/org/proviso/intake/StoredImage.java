package org.proviso.intake;

/** A picture as it was loaded: what kind it is, the SHA-256 of its bytes, and the bytes. */
public record StoredImage(String mediaType, String sha256, byte[] content) {}
