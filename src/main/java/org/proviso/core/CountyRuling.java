package org.proviso.core;

import java.time.LocalDate;

/**
 * The office's signed word, once for an election, on a rule nobody could source: it confirms the value a rule pack
 * gives from memory, or gives one where the pack has none ({@code value} as the pack file spells it, empty to confirm).
 */
public record CountyRuling(String rule, String value, String signedBy, LocalDate on, String ground) {}
