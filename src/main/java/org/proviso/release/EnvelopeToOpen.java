package org.proviso.release;

import org.proviso.core.EnvelopeKey;
import org.proviso.review.Decision;

/** An envelope decided to count, in full or in part, that no batch has yet. */
public record EnvelopeToOpen(EnvelopeKey key, Decision decision) {}
