package org.proviso.core.rules;

import java.time.LocalTime;
import java.util.List;
import org.proviso.core.calendar.DeadlineRule;

/** A value of one of the kinds of {@link RuleType}; each spells itself the same way every time. */
public sealed interface RuleValue {

    /** The spelling that goes into the hash of a resolved pack. */
    String spelled();

    /** The value as it reads beside an answer. */
    default String inWords() {
        return spelled().replace('_', ' ');
    }

    record Flag(boolean yes) implements RuleValue {
        @Override
        public String spelled() {
            return yes ? "yes" : "no";
        }
    }

    record Word(String word) implements RuleValue {
        @Override
        public String spelled() {
            return word;
        }
    }

    record Words(List<String> words) implements RuleValue {
        @Override
        public String spelled() {
            return String.join(", ", words);
        }
    }

    /** The state's own words for a thing. */
    record Text(String text) implements RuleValue {
        @Override
        public String spelled() {
            return text;
        }

        @Override
        public String inWords() {
            return text;
        }
    }

    @SuppressWarnings("JavaLangClash") // Always named with its family, as RuleValue.Number.
    record Number(int number) implements RuleValue {
        @Override
        public String spelled() {
            return Integer.toString(number);
        }
    }

    record Time(LocalTime time) implements RuleValue {
        @Override
        public String spelled() {
            return time.toString();
        }
    }

    record Dated(DeadlineRule rule) implements RuleValue {
        @Override
        public String spelled() {
            return rule.words();
        }
    }

    /** The law sets no such deadline. */
    record NoDeadline() implements RuleValue {
        @Override
        public String spelled() {
            return "none";
        }
    }

    record Follows(Consequence consequence) implements RuleValue {
        @Override
        public String spelled() {
            return consequence.spelled();
        }

        @Override
        public String inWords() {
            return consequence.words();
        }
    }

    /** No source was found: its question stays open until the office rules. */
    record Unknown() implements RuleValue {
        @Override
        public String spelled() {
            return "unknown";
        }
    }
}
