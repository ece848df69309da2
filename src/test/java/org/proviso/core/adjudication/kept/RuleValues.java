package org.proviso.core.adjudication.kept;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.proviso.core.calendar.Anchor;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.IfClosed;
import org.proviso.core.calendar.Step;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.RuleValue;

/** Values of every kind that a rule may have, every word and every part of a deadline among them. */
final class RuleValues {

    private static final List<TimeOfDay> TIMES = List.of(
            TimeOfDay.CLOSE_OF_BUSINESS,
            TimeOfDay.END_OF_DAY,
            new TimeOfDay(TimeOfDay.Kind.CLOCK, LocalTime.of(17, 0)),
            new TimeOfDay(TimeOfDay.Kind.CLOCK, LocalTime.of(23, 59, 59)));

    private RuleValues() {}

    static List<RuleValue> every() {
        List<RuleValue> values = new ArrayList<>(List.of(
                new RuleValue.Flag(true),
                new RuleValue.Flag(false),
                new RuleValue.Word("either"),
                new RuleValue.Word(""),
                new RuleValue.Words(List.of()),
                new RuleValue.Words(List.of("thanksgiving", "christmas", "thanksgiving")),
                new RuleValue.Number(-7),
                new RuleValue.Number(Integer.MAX_VALUE),
                new RuleValue.Time(LocalTime.of(0, 0)),
                new RuleValue.Time(LocalTime.of(16, 30, 15)),
                new RuleValue.Text("questioned ballot, \"Q\" envelope"),
                new RuleValue.NoDeadline(),
                new RuleValue.Unknown()));
        values.addAll(deadlines());
        values.addAll(consequences());
        return values;
    }

    private static List<RuleValue> deadlines() {
        List<Step> steps = new ArrayList<>(List.of(
                new Step.Days(0),
                new Step.Days(-28),
                new Step.BusinessDays(3),
                new Step.BusinessDays(-1),
                new Step.Fixed(LocalDate.of(2024, 10, 14)),
                new Step.Then(new Step.Weekday(-4, DayOfWeek.TUESDAY), new Step.Days(-1))));
        Arrays.stream(DayOfWeek.values()).forEach(day -> steps.add(new Step.Weekday(day.getValue() - 4, day)));
        List<RuleValue> deadlines = new ArrayList<>();
        for (Anchor anchor : Anchor.values()) {
            for (Step step : steps) {
                for (IfClosed closed : IfClosed.values()) {
                    TimeOfDay time = TIMES.get(deadlines.size() % TIMES.size());
                    deadlines.add(new RuleValue.Dated(new DeadlineRule(anchor, step, time, closed)));
                }
            }
        }
        deadlines.add(new RuleValue.Dated(new DeadlineRule(
                Anchor.NOTICE_SENT,
                new Step.Days(1),
                TimeOfDay.THAT_HOUR,
                IfClosed.NEXT_POSTAL_DAY,
                LocalTime.of(17, 0))));
        return deadlines;
    }

    private static List<RuleValue> consequences() {
        List<RuleValue> consequences = new ArrayList<>();
        for (Consequence.Does does : Consequence.Does.values()) {
            consequences.add(new RuleValue.Follows(new Consequence(does, null, null)));
            for (Ask ask : Ask.values()) {
                consequences.add(new RuleValue.Follows(new Consequence(does, null, ask)));
            }
        }
        for (ContestPolicy policy : ContestPolicy.values()) {
            consequences.add(new RuleValue.Follows(new Consequence(Consequence.Does.IN_PART, policy, Ask.SIGNATURE)));
        }
        return consequences;
    }
}
