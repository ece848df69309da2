package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.Words;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/** Nobody may be decided before the time to cure is over, nor certified before all are decided. */
final class DeadlineChecks {

    private static final String PROMISE =
            "The time to cure ends before the decision, the decision before certification.";

    private DeadlineChecks() {}

    static List<Violation> of(ResolvedPack pack) {
        DeadlineBook book = DeadlineBook.of(pack, Set.of());
        List<Violation> violations = new ArrayList<>();
        Optional<Deadline> decision = book.of(Rules.DECISION);
        for (Ask ask : Ask.values()) {
            inOrder(pack, Rule.cure(ask), book.of(Rule.cure(ask)), Rules.DECISION, decision, violations);
        }
        inOrder(pack, Rules.DECISION, decision, Rules.CERTIFICATION, book.of(Rules.CERTIFICATION), violations);
        return violations;
    }

    private static void inOrder(
            ResolvedPack pack,
            Rule firstRule,
            Optional<Deadline> first,
            Rule secondRule,
            Optional<Deadline> second,
            List<Violation> violations) {
        if (first.isPresent()
                && second.isPresent()
                && second.get().hasPassed(first.get().lastMoment())) {
            violations.add(new Violation(
                    PROMISE,
                    "in the election of " + Words.longDate(pack.electionDate()) + " " + firstRule.key() + " ends on "
                            + Words.moment(first.get().lastMoment()) + ", after " + secondRule.key() + " on "
                            + Words.moment(second.get().lastMoment())));
        }
    }
}
