package org.proviso.board.agenda;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import org.proviso.board.AgendaItem;
import org.proviso.board.ProposalForDecision;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/**
 * Which envelopes are put to the vote together: those with the same proposed outcome and the same primary reason; all
 * that are to count in full are one group. A proposal that departs from the recommendation stands alone, because its
 * reason is its own. A group keeps its number while the session lasts; new ones are numbered by outcome, then by the
 * pack's precedence of reasons.
 */
final class ConsentGroups {

    private record Kind(DecisionOutcome outcome, @Nullable Reason reason) {}

    private final Map<Kind, Integer> numbers = new HashMap<>();

    /** The groups an agenda has. */
    ConsentGroups(List<AgendaItem> agenda) {
        for (AgendaItem item : agenda) {
            if (item.group() != null && item.proposed() != null) {
                numbers.put(kind(item.proposed(), item.primaryReason()), item.group());
            }
        }
    }

    /** Numbers the groups that these proposals need and the agenda does not have yet. */
    void add(List<ProposalForDecision> proposals, ToIntFunction<Reason> precedence) {
        TreeSet<Kind> fresh = new TreeSet<>(Comparator.comparing(Kind::outcome)
                .thenComparingInt(kind -> kind.reason() == null ? -1 : precedence.applyAsInt(kind.reason())));
        for (ProposalForDecision proposed : proposals) {
            if (joins(proposed)) {
                fresh.add(kind(proposed.outcome(), proposed.primaryReason()));
            }
        }
        for (Kind kind : fresh) {
            numbers.putIfAbsent(kind, next());
        }
    }

    private int next() {
        return numbers.values().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    /** The number of the group a proposal belongs to; null where it stands alone. */
    @Nullable
    Integer groupNumber(ProposalForDecision proposed) {
        return joins(proposed)
                ? Objects.requireNonNull(numbers.get(kind(proposed.outcome(), proposed.primaryReason())))
                : null;
    }

    private static boolean joins(ProposalForDecision proposed) {
        return proposed.departsBecause().isBlank();
    }

    private static Kind kind(DecisionOutcome outcome, @Nullable Reason reason) {
        return new Kind(outcome, outcome == DecisionOutcome.COUNT ? null : reason);
    }
}
