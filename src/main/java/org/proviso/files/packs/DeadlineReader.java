package org.proviso.files.packs;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.files.InputException;
import org.proviso.files.yaml.YamlNode;

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
                node.required("if_closed").code(ClosedDayRule.class),
                node.optional("acts_until").map(YamlNode::time).orElse(null)));
    }

    private record Counted(DeadlineAnchor anchor, DeadlineOffset step) {}

    /** A day that a court named: it stands for itself. */
    private static Counted fixed(YamlNode node) {
        for (String other : List.of("days", "business_days", "weekday", "nth", "before", "after", "on")) {
            node.optional(other).ifPresent(value -> {
                throw value.wrong("a fixed date has nothing to count from");
            });
        }
        return new Counted(
                DeadlineAnchor.ELECTION_DAY,
                new DeadlineOffset.Fixed(node.required("date").date()));
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
            return new Counted(first.anchor(), new DeadlineOffset.Then(first.step(), step(node, on, before)));
        }
        return new Counted(from.code(DeadlineAnchor.class), step(node, on, before));
    }

    private static DeadlineOffset step(YamlNode node, Optional<YamlNode> on, Optional<YamlNode> before) {
        return on.isPresent() ? onTheDay(node) : distance(node, before.isPresent() ? -1 : 1);
    }

    /** Certification may be what mail ballots are counted to, so it cannot itself be counted from them. */
    private static void refuseCircle(Rule rule, DeadlineAnchor anchor, YamlNode node) {
        boolean circle = (rule.equals(Rules.CERTIFICATION)
                        && (anchor == DeadlineAnchor.CERTIFICATION || anchor == DeadlineAnchor.MAIL_RECEIPT))
                || (rule.equals(Rules.MAIL_RECEIPT) && anchor == DeadlineAnchor.MAIL_RECEIPT);
        if (circle) {
            throw node.wrong(rule.key() + " cannot be counted from " + anchor.code());
        }
    }

    private static void refuseHourOfADay(DeadlineAnchor anchor, TimeOfDay time, YamlNode node) {
        if (time.kind() == TimeOfDay.Kind.THAT_HOUR && anchor == DeadlineAnchor.ELECTION_DAY) {
            throw node.required("time").wrong("election day has no time of day to count from");
        }
    }

    private static DeadlineOffset onTheDay(YamlNode node) {
        for (String distance : DISTANCES) {
            node.optional(distance).ifPresent(value -> {
                throw value.wrong("a deadline on a day cannot also have a distance");
            });
        }
        return new DeadlineOffset.Days(0);
    }

    private static DeadlineOffset distance(YamlNode node, int direction) {
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
            throw node.required("nth").wrong("nth can be used only with weekday");
        }
        if (days.isPresent()) {
            return new DeadlineOffset.Days(direction * days.get().whole());
        }
        if (businessDays.isPresent()) {
            return new DeadlineOffset.BusinessDays(
                    direction * businessDays.get().whole());
        }
        int nth = node.optional("nth").map(YamlNode::whole).orElse(1);
        if (nth < 1) {
            throw node.wrong("nth starts at 1");
        }
        return new DeadlineOffset.Weekday(direction * nth, weekday(weekday.orElseThrow()));
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
