package org.proviso.intake.desk;

/** Cure evidence of an envelope as a sentence, with its number; whether it was taken back, which the sentence says. */
public record BroughtPaper(int number, String words, boolean takenBack) {}
