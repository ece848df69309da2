package org.proviso.review.queue;

import org.proviso.review.CaseVersion;

/** A signature to look at next; whether the case has to be taken for it is no word about who looked before. */
public record SignatureToCompare(CaseVersion seen, boolean toTake) {}
