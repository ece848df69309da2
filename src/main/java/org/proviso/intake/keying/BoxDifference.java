package org.proviso.intake.keying;

/** A box that two people keyed differently; a box without text is shown by its state, such as {@code (illegible)}. */
public record BoxDifference(String box, String keyedNow, String keyedBefore) {}
