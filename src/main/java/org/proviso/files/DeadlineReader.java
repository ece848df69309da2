package org.proviso.files;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proviso.core.calendar.Anchor;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.IfClosed;
import org.proviso.core.calendar.Step;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Reads a deadline of a rule pack: a distance from an anchor, or from a day that is itself counted from one. */
final class DeadlineReader {

    private static final List<String> DISTANCES = List.of("days", "business_days", "weekday", "nth");

    private DeadlineReader() {}

    static RuleValue read(Rule rule, YamlNode node) {
        if (!node.isMap()) {
            if (node.text().equals("none")) {
                return new RuleValue.NoDeadline();
            }
            throw node.wrong("must be a deadline such as {days: 7, after: election_day, time: \"17:00\","
                    + " if_closed: next_open_day}, or none, or unknown");
        }
        node.rejectUnknownKeys(
                "days",
                "business_days",
                "weekday",
                "nth",
                "before",
                "after",
                "on",
                "date",
                "time",
                "if_closed",
                "acts_until");
        TimeOfDay time = time(node.required("time"));
        Counted counted = node.optional("date").isPresent() ? fixed(node) : counted(node);
        refuseCircle(rule, counted.anchor(), node);
        refuseHourOfADay(counted.anchor(), time, node);
        return new RuleValue.Dated(new DeadlineRule(
                counted.anchor(),
                counted.step(),
                time,
                node.required("if_closed").code(IfClosed.class),
                node.optional("acts_until").map(YamlNode::time).orElse(null)));
    }

    private record Counted(Anchor anchor, Step step) {}

    /** A day that a court named: it stands for itself. */
    private static Counted fixed(YamlNode node) {
        for (String other : List.of("days", "business_days", "weekday", "nth", "before", "after", "on")) {
            node.optional(other).ifPresent(value -> {
                throw value.wrong("a named date is counted from nothing");
            });
        }
        return new Counted(
                Anchor.ELECTION_DAY, new Step.Fixed(node.required("date").date()));
    }

    private static Counted counted(YamlNode node) {
        Optional<YamlNode> before = node.optional("before");
        Optional<YamlNode> after = node.optional("after");
        Optional<YamlNode> on = node.optional("on");
        if (before.stream().count() + after.stream().count() + on.stream().count() != 1) {
            throw node.wrong("a deadline needs exactly one of before, after and on");
        }
        YamlNode from = before.or(() -> after).or(() -> on).orElseThrow();
        if (from.isMap()) {
            from.rejectUnknownKeys("days", "business_days", "weekday", "nth", "before", "after", "on");
            Counted first = counted(from);
            return new Counted(first.anchor(), new Step.Then(first.step(), step(node, on, before)));
        }
        return new Counted(from.code(Anchor.class), step(node, on, before));
    }

    private static Step step(YamlNode node, Optional<YamlNode> on, Optional<YamlNode> before) {
        return on.isPresent() ? onTheDay(node) : distance(node, before.isPresent() ? -1 : 1);
    }

    /** Certification may be what mail ballots are counted to, so it cannot itself be counted from them. */
    private static void refuseCircle(Rule rule, Anchor anchor, YamlNode node) {
        boolean circle =
                (rule.equals(Rules.CERTIFICATION) && (anchor == Anchor.CERTIFICATION || anchor == Anchor.MAIL_RECEIPT))
                        || (rule.equals(Rules.MAIL_RECEIPT) && anchor == Anchor.MAIL_RECEIPT);
        if (circle) {
            throw node.wrong(rule.key() + " cannot be counted from " + anchor.code());
        }
    }

    private static void refuseHourOfADay(Anchor anchor, TimeOfDay time, YamlNode node) {
        if (time.kind() == TimeOfDay.Kind.THAT_HOUR && anchor == Anchor.ELECTION_DAY) {
            throw node.required("time").wrong("election day has no hour of its own to count from");
        }
    }

    private static Step onTheDay(YamlNode node) {
        for (String distance : DISTANCES) {
            node.optional(distance).ifPresent(value -> {
                throw value.wrong("a deadline on a day has no distance to it");
            });
        }
        return new Step.Days(0);
    }

    private static Step distance(YamlNode node, int direction) {
        Optional<YamlNode> days = node.optional("days");
        Optional<YamlNode> businessDays = node.optional("business_days");
        Optional<YamlNode> weekday = node.optional("weekday");
        if (days.stream().count()
                        + businessDays.stream().count()
                        + weekday.stream().count()
                != 1) {
            throw node.wrong("a deadline needs exactly one of days, business_days and weekday");
        }
        if (weekday.isEmpty() && node.optional("nth").isPresent()) {
            throw node.required("nth").wrong("nth goes with weekday only");
        }
        if (days.isPresent()) {
            return new Step.Days(direction * days.get().whole());
        }
        if (businessDays.isPresent()) {
            return new Step.BusinessDays(direction * businessDays.get().whole());
        }
        int nth = node.optional("nth").map(YamlNode::whole).orElse(1);
        if (nth < 1) {
            throw node.wrong("nth starts at 1");
        }
        return new Step.Weekday(direction * nth, weekday(weekday.orElseThrow()));
    }

    private static DayOfWeek weekday(YamlNode node) {
        return Arrays.stream(DayOfWeek.values())
                .filter(day -> day.name().toLowerCase(Locale.ROOT).equals(node.text()))
                .findFirst()
                .orElseThrow(() -> node.wrong(InputException.quoted(node.text()) + " is not a weekday"));
    }

    private static TimeOfDay time(YamlNode node) {
        return TimeOfDay.parse(node.text())
                .orElseThrow(() -> node.wrong(InputException.quoted(node.text())
                        + " is not a time (write it as 17:00, close_of_business, end_of_day or that_hour)"));
    }
}
