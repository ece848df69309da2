package org.proviso.board;

import java.time.Instant;

/** A member who stands aside on one envelope in a session, and on what ground. */
public record Recusal(String envelopeNo, String userName, String ground, Instant recordedAt) {}
