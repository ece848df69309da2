package org.proviso.board;

import java.time.Instant;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;

/** A member who is recused from one envelope in a session, and on what ground. */
public record Recusal(EnvelopeNumber envelopeNo, UserName userName, String ground, Instant recordedAt) {}
