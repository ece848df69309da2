package org.proviso.core.adjudication.kept;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.RuleValue;

/** One value of a rule pack as an object whose {@code kind} says which of its kinds it is. */
final class RuleValueJson {

    private RuleValueJson() {}

    static Map<String, Object> write(RuleValue value) {
        if (value instanceof RuleValue.Flag flag) {
            return Map.of("kind", "flag", "yes", flag.yes());
        } else if (value instanceof RuleValue.Word word) {
            return Map.of("kind", "word", "word", word.word());
        } else if (value instanceof RuleValue.Words words) {
            return Map.of("kind", "words", "words", words.words());
        } else if (value instanceof RuleValue.Text text) {
            return Map.of("kind", "text", "text", text.text());
        } else if (value instanceof RuleValue.Number number) {
            return Map.of("kind", "number", "number", number.number());
        } else if (value instanceof RuleValue.Time time) {
            return Map.of("kind", "time", "time", time.time().toString());
        } else if (value instanceof RuleValue.Dated dated) {
            return deadline(dated.rule());
        } else if (value instanceof RuleValue.NoDeadline) {
            return Map.of("kind", "no_deadline");
        } else if (value instanceof RuleValue.Follows follows) {
            return follows(follows.consequence());
        }
        return Map.of("kind", "unknown");
    }

    static RuleValue read(KeptFields fields) {
        String kind = fields.text("kind");
        return switch (kind) {
            case "flag" -> new RuleValue.Flag(fields.flag("yes"));
            case "word" -> new RuleValue.Word(fields.text("word"));
            case "words" -> new RuleValue.Words(fields.texts("words"));
            case "text" -> new RuleValue.Text(fields.text("text"));
            case "number" -> new RuleValue.Number((int) fields.number("number"));
            case "time" -> new RuleValue.Time(LocalTime.parse(fields.text("time")));
            case "deadline" -> new RuleValue.Dated(deadline(fields));
            case "no_deadline" -> new RuleValue.NoDeadline();
            case "follows" -> new RuleValue.Follows(follows(fields));
            case "unknown" -> new RuleValue.Unknown();
            default -> throw new IllegalArgumentException("\"" + kind + "\" is not a kind of value");
        };
    }

    private static Map<String, Object> deadline(DeadlineRule rule) {
        Map<String, Object> text = new HashMap<>(step(rule.step()));
        text.put("kind", "deadline");
        text.put("anchor", rule.anchor().code());
        text.put("time", time(rule.time()));
        text.put("if_closed", rule.ifClosed().code());
        if (rule.actsUntil() != null) {
            text.put("acts_until", rule.actsUntil().toString());
        }
        return text;
    }

    private static DeadlineRule deadline(KeptFields fields) {
        return new DeadlineRule(
                fields.code("anchor", DeadlineAnchor.class),
                step(fields),
                TimeOfDay.parse(fields.text("time"))
                        .orElseThrow(() -> new IllegalArgumentException("\"time\" is not a time of day")),
                fields.code("if_closed", ClosedDayRule.class),
                fields.optional("acts_until", LocalTime::parse));
    }

    private static Map<String, Object> step(DeadlineOffset step) {
        if (step instanceof DeadlineOffset.Weekday weekday) {
            return Map.of("nth", weekday.nth(), "weekday", weekday.weekday().name());
        }
        if (step instanceof DeadlineOffset.Then then) {
            return Map.of("first", step(then.first()), "second", step(then.second()));
        }
        if (step instanceof DeadlineOffset.Fixed fixed) {
            return Map.of("date", fixed.day().toString());
        }
        return step instanceof DeadlineOffset.BusinessDays open
                ? Map.of("business_days", open.days())
                : Map.of("days", ((DeadlineOffset.Days) step).days());
    }

    private static DeadlineOffset step(KeptFields fields) {
        if (fields.has("weekday")) {
            return new DeadlineOffset.Weekday((int) fields.number("nth"), DayOfWeek.valueOf(fields.text("weekday")));
        }
        if (fields.has("first")) {
            return new DeadlineOffset.Then(step(fields.object("first")), step(fields.object("second")));
        }
        if (fields.has("date")) {
            return new DeadlineOffset.Fixed(LocalDate.parse(fields.text("date")));
        }
        return fields.has("business_days")
                ? new DeadlineOffset.BusinessDays((int) fields.number("business_days"))
                : new DeadlineOffset.Days((int) fields.number("days"));
    }

    private static String time(TimeOfDay time) {
        return time.kind() == TimeOfDay.Kind.CLOCK
                ? time.time().toString()
                : time.kind().name().toLowerCase(Locale.ROOT);
    }

    static Map<String, Object> follows(Consequence consequence) {
        Map<String, Object> text = new HashMap<>();
        text.put("kind", "follows");
        text.put("does", consequence.does().code());
        put(text, "policy", consequence.policy());
        put(text, "cure", consequence.cure());
        return text;
    }

    private static void put(Map<String, Object> text, String name, @Nullable Code code) {
        if (code != null) {
            text.put(name, code.code());
        }
    }

    private static Consequence follows(KeptFields fields) {
        return new Consequence(
                fields.code("does", Consequence.Effect.class),
                fields.optional("policy", word -> KeptFields.code(ContestPolicy.class, word)),
                fields.optional("cure", word -> KeptFields.code(Ask.class, word)));
    }
}
