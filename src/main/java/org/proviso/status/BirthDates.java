package org.proviso.status;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;

/**
 * The birth dates under which an envelope can be looked up: the one on the affirmation, and, once a person settled who
 * the voter is, the one on the roll. With neither it cannot be looked up at all.
 */
final class BirthDates {

    /** What registration files hold where no birth date was given (common practice). */
    private static final Set<LocalDate> PLACEHOLDERS = Set.of(
            LocalDate.of(1800, 1, 1),
            LocalDate.of(1850, 1, 1),
            LocalDate.of(1900, 1, 1),
            LocalDate.of(1901, 1, 1),
            LocalDate.of(1111, 11, 11),
            LocalDate.of(1, 1, 1));

    private BirthDates() {}

    static Set<LocalDate> of(CaseReport report) {
        Set<LocalDate> known = new LinkedHashSet<>();
        add(known, report.envelope().affirmation().birthDate());
        Optional<Voter> voter = report.voter().filter(any -> report.link().isSettled());
        voter.ifPresent(settled -> add(known, settled.birthDate()));
        return known;
    }

    private static void add(Set<LocalDate> known, @Nullable LocalDate date) {
        if (date != null && !PLACEHOLDERS.contains(date)) {
            known.add(date);
        }
    }
}
