package org.proviso.core.rules;

import java.time.LocalDate;

/**
 * A value and the first election date it applies to, where it is written, how it is known, and when somebody last
 * checked it against the source.
 */
public record DatedValue(LocalDate from, RuleValue value, Reference reference, Basis basis, LocalDate checked) {}
