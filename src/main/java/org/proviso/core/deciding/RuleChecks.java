package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;

/** Whether the rule pack lets an act happen at all: its rules must be firm and its gates open. */
public final class RuleChecks {

    private RuleChecks() {}

    /** No decision rests on a rule that was not read in a source, until the office rules on it. */
    public static Optional<Refusal> firm(ResolvedPack pack, Rule rule) {
        ResolvedRule given = pack.of(rule);
        return given.isFirm() ? Optional.empty() : Optional.of(unsettled(given, how(given)));
    }

    /** Whether a gate has opened by that moment, local to the county. Where the law sets none, it is always open. */
    public static Optional<Refusal> gate(DeadlineBook book, Rule gate, LocalDateTime at) {
        Optional<Refusal> unsettled = firm(book.pack(), gate);
        if (unsettled.isPresent()) {
            return unsettled;
        }
        ResolvedRule given = book.pack().of(gate);
        if (given.value() instanceof RuleValue.NoDeadline) {
            return Optional.empty();
        }
        Optional<Deadline> opens = book.of(gate);
        if (opens.isEmpty()) {
            return Optional.of(Refusal.under(
                    given, Why.GATE_NOT_OPEN, "Not yet: the date that sets \"" + gate.meaning() + "\" is not known."));
        }
        return closed(given, opens.get().lastMoment(), at);
    }

    /** Nothing happens before all other ballots are counted, where the pack says so. */
    public static Optional<Refusal> othersFirst(
            ResolvedPack pack, Rule rule, BooleanSupplier areCounted, String words) {
        return pack.isYes(rule) && !areCounted.getAsBoolean()
                ? Optional.of(Refusal.under(pack.of(rule), Why.GATE_NOT_OPEN, words))
                : Optional.empty();
    }

    private static Optional<Refusal> closed(ResolvedRule gate, LocalDateTime opens, LocalDateTime at) {
        return at.isBefore(opens)
                ? Optional.of(Refusal.under(gate, Why.GATE_NOT_OPEN, "Not before " + DateWords.moment(opens) + "."))
                : Optional.empty();
    }

    static Refusal unsettled(ResolvedRule given, String how) {
        return Refusal.under(
                given,
                Why.RULE_NOT_SETTLED,
                "The office must sign a county ruling on " + given.rule().meaning() + " ("
                        + given.rule().key() + "): " + how + ".");
    }

    private static String how(ResolvedRule given) {
        return given.isKnown() ? "the rule pack has it from memory" : "no source settles it";
    }
}
