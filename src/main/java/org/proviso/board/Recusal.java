package org.proviso.board;

import java.time.Instant;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;

/** A member who stands aside on one envelope in a session, and on what ground. */
public record Recusal(EnvelopeNumber envelopeNo, UserName userName, String ground, Instant recordedAt) {}
