package org.proviso.core.adjudication.kept;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
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
        List<DeadlineOffset> steps = new ArrayList<>(List.of(
                new DeadlineOffset.Days(0),
                new DeadlineOffset.Days(-28),
                new DeadlineOffset.BusinessDays(3),
                new DeadlineOffset.BusinessDays(-1),
                new DeadlineOffset.Fixed(LocalDate.of(2024, 10, 14)),
                new DeadlineOffset.Then(
                        new DeadlineOffset.Weekday(-4, DayOfWeek.TUESDAY), new DeadlineOffset.Days(-1))));
        Arrays.stream(DayOfWeek.values())
                .forEach(day -> steps.add(new DeadlineOffset.Weekday(day.getValue() - 4, day)));
        List<RuleValue> deadlines = new ArrayList<>();
        for (DeadlineAnchor anchor : DeadlineAnchor.values()) {
            for (DeadlineOffset step : steps) {
                for (ClosedDayRule closed : ClosedDayRule.values()) {
                    TimeOfDay time = TIMES.get(deadlines.size() % TIMES.size());
                    deadlines.add(new RuleValue.Dated(new DeadlineRule(anchor, step, time, closed)));
                }
            }
        }
        deadlines.add(new RuleValue.Dated(new DeadlineRule(
                DeadlineAnchor.NOTICE_SENT,
                new DeadlineOffset.Days(1),
                TimeOfDay.THAT_HOUR,
                ClosedDayRule.NEXT_POSTAL_DAY,
                LocalTime.of(17, 0))));
        return deadlines;
    }

    private static List<RuleValue> consequences() {
        List<RuleValue> consequences = new ArrayList<>();
        for (Consequence.Effect does : Consequence.Effect.values()) {
            consequences.add(new RuleValue.Follows(new Consequence(does, null, null)));
            for (Ask ask : Ask.values()) {
                consequences.add(new RuleValue.Follows(new Consequence(does, null, ask)));
            }
        }
        for (ContestPolicy policy : ContestPolicy.values()) {
            consequences.add(new RuleValue.Follows(new Consequence(Consequence.Effect.IN_PART, policy, Ask.SIGNATURE)));
        }
        return consequences;
    }
}
