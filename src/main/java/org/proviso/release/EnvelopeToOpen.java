package org.proviso.release;

import org.proviso.review.CaseKey;
import org.proviso.review.Decision;

/** An envelope decided to count, in full or in part, that no batch has yet. */
public record EnvelopeToOpen(CaseKey key, Decision decision) {}
