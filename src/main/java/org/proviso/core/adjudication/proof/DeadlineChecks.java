package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/** No envelope may be due before its time to cure is over, and certification may not be due before every decision. */
final class DeadlineChecks {

    private static final String CURE =
            "The time to cure ends by the decision deadline, and the decision deadline is no later than certification.";
    private static final String GATE = "The earliest time for a step is never later than its deadline.";

    private final ResolvedPack pack;
    private final DeadlineBook book;
    private final List<Violation> violations = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    private DeadlineChecks(ResolvedPack pack) {
        this.pack = pack;
        this.book = DeadlineBook.of(pack, Set.of());
    }

    static DeadlineChecks of(ResolvedPack pack) {
        DeadlineChecks checks = new DeadlineChecks(pack);
        for (Ask ask : Ask.values()) {
            checks.inOrder(CURE, Rule.cure(ask), Rules.DECISION);
        }
        checks.inOrder(CURE, Rules.DECISION, Rules.CERTIFICATION);
        checks.inOrder(GATE, Rules.GATE_REVIEW, Rules.DECISION);
        checks.inOrder(GATE, Rules.GATE_DECISION, Rules.DECISION);
        checks.inOrder(GATE, Rules.GATE_OPEN, Rules.CERTIFICATION);
        return checks;
    }

    List<Violation> violations() {
        return violations;
    }

    /** What would break the promise if a court had not ordered it. */
    List<String> warnings() {
        return warnings;
    }

    private void inOrder(String promise, Rule firstRule, Rule secondRule) {
        Optional<Deadline> first = book.of(firstRule);
        Optional<Deadline> second = book.of(secondRule);
        if (first.isEmpty()
                || second.isEmpty()
                || !second.get().hasPassed(first.get().lastMoment())) {
            return;
        }
        String shown = "in the election of " + DateWords.longDate(pack.electionDate()) + " " + firstRule.key() + " "
                + (promise.equals(GATE) ? "opens" : "ends") + " on "
                + DateWords.moment(first.get().lastMoment()) + ", after " + secondRule.key() + " on "
                + DateWords.moment(second.get().lastMoment());
        if (isOrdered(firstRule) || isOrdered(secondRule)) {
            warnings.add(shown + ", as ordered by a court");
        } else {
            violations.add(new Violation(promise, shown));
        }
    }

    private boolean isOrdered(Rule rule) {
        return pack.pack().orderOn(rule, pack.electionDate()).isPresent();
    }
}
