package org.proviso.core.rules;

import java.time.LocalDate;

/**
 * A value, the first election date it applies to and for which elections, where it is written, how it is known, and
 * when somebody last checked it against the source.
 */
public record DatedValue(
        LocalDate from,
        ElectionsCovered elections,
        RuleValue value,
        Reference reference,
        Basis basis,
        LocalDate checked) {

    /** A value for every election from that date. */
    public DatedValue(LocalDate from, RuleValue value, Reference reference, Basis basis, LocalDate checked) {
        this(from, ElectionsCovered.ALL, value, reference, basis, checked);
    }

    /** Whether it is in force for an election on that day, unless a later one is. */
    public boolean appliesTo(LocalDate electionDate) {
        return !from.isAfter(electionDate) && elections.include(electionDate);
    }
}
