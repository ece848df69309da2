package org.proviso.review.queue;

import org.proviso.review.SeenCase;

/** The next signature to compare. Whether its case must be taken says nothing about who compared it before. */
public record SignatureTurn(SeenCase seen, boolean toTake) {}
