package org.proviso.intake.keying;

/** A box that two people keyed differently. */
public record BoxDifference(String box, KeyedText keyedNow, KeyedText keyedBefore) {}
