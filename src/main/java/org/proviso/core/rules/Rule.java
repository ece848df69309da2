package org.proviso.core.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One entry of the vocabulary in which rule packs are written: its key, the kind of value it takes, the words allowed
 * (where it takes words), what it means, and what hangs on it. A pack with a key that is not in {@link #all()} does
 * not load.
 */
public record Rule(String key, RuleType type, List<String> words, String meaning, Use use) {

    /** What hangs on a rule, and so what it means that a pack says nothing of it. */
    public enum Use {
        /** A question or a service needs it: where no pack gives it, what asks for it stays open. */
        NEEDED,
        /** A question reads it where a pack gives it; where none does, the law of that pack has no such rule. */
        OPTIONAL,
        /** Shown, printed and put into the calendar; no answer turns on it. */
        TOLD
    }

    /** A rule that is needed. */
    Rule(String key, RuleType type, List<String> words, String meaning) {
        this(key, type, words, meaning, Use.NEEDED);
    }

    /** The consequence of a reason. */
    public static Rule consequence(Reason reason) {
        return of("consequence." + reason.code());
    }

    /** Until when the voter may do what is asked. */
    public static Rule cure(Ask ask) {
        return of("cure." + ask.code());
    }

    /** By when the voter must be told what is asked. */
    public static Rule notice(Ask ask) {
        return of("notice." + ask.code());
    }

    /** Whether an ask that ran out counts only if its notice is logged as sent in time. */
    public static Rule noticeRequired(Ask ask) {
        return of("notice_required." + ask.code());
    }

    /** The ways in which the voter may do what is asked: in person, by mail. */
    public static Rule cureWays(Ask ask) {
        return of("cure_ways." + ask.code());
    }

    /** The rule of that key; the key is one of the code base's own. */
    static Rule of(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no rule named " + key));
    }

    public static Optional<Rule> find(String key) {
        return Optional.ofNullable(Vocabulary.BY_KEY.get(key));
    }

    /** The whole vocabulary, in the order in which packs are best read. */
    public static List<Rule> all() {
        return List.copyOf(Vocabulary.BY_KEY.values());
    }

    /** A rule is its key: there is one of each. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Rule that && that.key.equals(key);
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    /** Holder that builds the generated part of the vocabulary once. */
    private static final class Vocabulary {
        static final List<String> CURE_WAYS =
                List.of("in_person", "mail", "email", "fax", "upload", "text_message", "phone");
        static final Map<String, Rule> BY_KEY = new LinkedHashMap<>();

        static {
            List<Rule> rules = new ArrayList<>(Rules.fixed());
            rules.addAll(StateRules.fixed());
            rules.addAll(InformationRules.fixed());
            for (Reason reason : Reason.values()) {
                rules.add(new Rule(
                        "consequence." + reason.code(),
                        RuleType.CONSEQUENCE,
                        List.of(),
                        "what happens when " + reason.words(),
                        reason.isRefinement() ? Use.OPTIONAL : Use.NEEDED));
            }
            for (Ask ask : Ask.values()) {
                rules.add(new Rule(
                        "cure." + ask.code(),
                        RuleType.DEADLINE,
                        List.of(),
                        "the deadline for the voter to " + ask.words()));
                rules.add(new Rule(
                        "notice." + ask.code(),
                        RuleType.DEADLINE,
                        List.of(),
                        "the deadline for notifying the voter to " + ask.words()));
                rules.add(new Rule(
                        "notice_required." + ask.code(),
                        RuleType.FLAG,
                        List.of(),
                        "whether a missed deadline to " + ask.words()
                                + " counts only if the notice was logged as sent in time"));
                rules.add(new Rule(
                        "cure_ways." + ask.code(),
                        RuleType.WORDS,
                        CURE_WAYS,
                        "the ways in which the voter may " + ask.words(),
                        Use.TOLD));
            }
            rules.forEach(rule -> BY_KEY.put(rule.key(), rule));
        }
    }
}
