package org.proviso.status;

import org.proviso.core.rules.Reason;

/**
 * A reason in the sentence of the election's rule pack, as the voter reads it in English. Only the federal floor's own
 * sentences have a translation; {@code usual} says that this is one of them.
 */
public record OwnReason(Reason reason, String words, boolean usual) {}
