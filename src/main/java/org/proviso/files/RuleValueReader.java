package org.proviso.files;

import java.io.StringReader;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proviso.core.calendar.Anchor;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.IfClosed;
import org.proviso.core.calendar.Step;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Reads one value of a rule pack, of the kind that its rule takes. */
final class RuleValueReader {

    private RuleValueReader() {}

    static RuleValue read(Rule rule, YamlNode node) {
        if (!node.isMap() && !node.isList() && node.text().equals("unknown")) {
            return new RuleValue.Unknown();
        }
        return switch (rule.type()) {
            case FLAG -> new RuleValue.Flag(node.yes());
            case WORD -> new RuleValue.Word(word(rule, node));
            case WORDS -> new RuleValue.Words(words(rule, node));
            case TEXT -> new RuleValue.Text(node.text());
            case NUMBER -> new RuleValue.Number(node.whole());
            case TIME -> new RuleValue.Time(node.time());
            case DEADLINE -> deadline(rule, node);
            case CONSEQUENCE -> new RuleValue.Follows(consequence(node));
        };
    }

    /** A value written in one line, as a county ruling gives it. */
    static RuleValue readLine(Rule rule, String file, String line) {
        return read(
                rule,
                YamlDocument.read(file, new StringReader("value: " + line)).required("value"));
    }

    private static String word(Rule rule, YamlNode node) {
        if (!rule.words().contains(node.text())) {
            throw node.wrong(InputException.quoted(node.text()) + " is not one of " + String.join(", ", rule.words()));
        }
        return node.text();
    }

    private static List<String> words(Rule rule, YamlNode node) {
        List<String> words = new ArrayList<>();
        for (YamlNode item : node.items()) {
            words.add(word(rule, item));
        }
        return List.copyOf(words);
    }

    private static Consequence consequence(YamlNode node) {
        if (!node.isMap()) {
            Consequence.Does does = node.code(Consequence.Does.class);
            return checked(node, new Consequence(does, null, null));
        }
        node.rejectUnknownKeys("does", "policy", "cure");
        return checked(
                node,
                new Consequence(
                        node.required("does").code(Consequence.Does.class),
                        node.optional("policy")
                                .map(policy -> policy.code(ContestPolicy.class))
                                .orElse(null),
                        node.optional("cure").map(cure -> cure.code(Ask.class)).orElse(null)));
    }

    private static Consequence checked(YamlNode node, Consequence consequence) {
        boolean part = consequence.does() == Consequence.Does.IN_PART;
        if (part != (consequence.policy() != null)) {
            throw node.wrong(part ? "in_part needs a policy" : "a policy goes with in_part only");
        }
        if (consequence.cure() != null && !consequence.costsTheVoter()) {
            throw node.wrong("a cure goes with reject or in_part only");
        }
        return consequence;
    }

    private static RuleValue deadline(Rule rule, YamlNode node) {
        if (!node.isMap()) {
            if (node.text().equals("none")) {
                return new RuleValue.NoDeadline();
            }
            throw node.wrong("must be a deadline such as {days: 7, after: election_day, time: \"17:00\","
                    + " if_closed: next_open_day}, or none, or unknown");
        }
        node.rejectUnknownKeys("days", "business_days", "weekday", "nth", "before", "after", "on", "time", "if_closed");
        Optional<YamlNode> before = node.optional("before");
        Optional<YamlNode> after = node.optional("after");
        Optional<YamlNode> on = node.optional("on");
        if (before.stream().count() + after.stream().count() + on.stream().count() != 1) {
            throw node.wrong("a deadline needs exactly one of before, after and on");
        }
        Anchor anchor = before.or(() -> after).or(() -> on).orElseThrow().code(Anchor.class);
        refuseCircle(rule, anchor, node);
        Step step = on.isPresent() ? onTheDay(node) : step(node, before.isPresent() ? -1 : 1);
        return new RuleValue.Dated(new DeadlineRule(
                anchor,
                step,
                time(node.required("time")),
                node.required("if_closed").code(IfClosed.class)));
    }

    /** Certification may be what mail ballots are counted to, so it cannot itself be counted from them. */
    private static void refuseCircle(Rule rule, Anchor anchor, YamlNode node) {
        boolean circle =
                rule.equals(Rules.CERTIFICATION) && (anchor == Anchor.CERTIFICATION || anchor == Anchor.MAIL_RECEIPT)
                        || rule.equals(Rules.MAIL_RECEIPT) && anchor == Anchor.MAIL_RECEIPT;
        if (circle) {
            throw node.wrong(rule.key() + " cannot be counted from " + anchor.code());
        }
    }

    private static Step onTheDay(YamlNode node) {
        for (String distance : List.of("days", "business_days", "weekday", "nth")) {
            node.optional(distance).ifPresent(value -> {
                throw value.wrong("a deadline on a day has no distance to it");
            });
        }
        return new Step.Days(0);
    }

    private static Step step(YamlNode node, int direction) {
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
                        + " is not a time (write it as 17:00, close_of_business or end_of_day)"));
    }
}
