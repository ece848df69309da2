package org.proviso.review.queue;

import org.proviso.review.CaseVersion;

/** The next signature to compare. Whether its case must be taken says nothing about who compared it before. */
public record SignatureToCompare(CaseVersion seen, boolean toTake) {}
