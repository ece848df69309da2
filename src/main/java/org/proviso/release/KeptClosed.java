package org.proviso.release;

import org.proviso.core.EnvelopeKey;

/** An envelope decided to count that must stay closed for now and is in no batch; {@code because}: a sentence. */
public record KeptClosed(EnvelopeKey key, String because) {}
