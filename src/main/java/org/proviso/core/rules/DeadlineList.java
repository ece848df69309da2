package org.proviso.core.rules;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.calendar.TimeOfDay;

/** Every deadline that a pack gives for an election, with what it is for and where it is written. */
public final class DeadlineList {

    /** Registration and the final deadlines: listed for every election, even where they are unknown. */
    private static final List<Rule> ALWAYS = List.of(
            Rules.REGISTER_IN_PERSON,
            Rules.REGISTER_ONLINE,
            Rules.REGISTER_MAIL_POSTMARK,
            Rules.REGISTER_MAIL_RECEIVED,
            Rules.MAIL_RECEIPT,
            Rules.DECISION,
            Rules.CERTIFICATION);

    private DeadlineList() {}

    /** One deadline; without a day where the law sets none, where it is unknown, or where an act must come first. */
    public record Line(Rule rule, ResolvedRule given, Optional<Deadline> deadline) {

        /** What the deadline is for, in one word: {@code registration}, {@code cure}. */
        public String what() {
            return switch (rule.key()) {
                case "mail.receipt" -> "mail_receipt";
                case "mail.postmark" -> "mail_postmark";
                case "decision.by" -> "decision";
                case "certification.by" -> "certification";
                default -> rule.key().substring(0, rule.key().indexOf('.'));
            };
        }

        /** The method, or what is asked, where there are several. */
        public String method() {
            return switch (rule.key()) {
                case "mail.receipt", "mail.postmark", "decision.by", "certification.by" -> "";
                default -> rule.key().substring(rule.key().indexOf('.') + 1);
            };
        }

        /** As a calendar shows it: the rule's meaning, starting with a capital letter. */
        public String words() {
            return switch (rule.key()) {
                case "gate.review" -> "No envelope may be reviewed before this";
                case "gate.decision" -> "No envelope may be decided before this";
                case "gate.open" -> "No envelope may be opened before this";
                default ->
                    rule.meaning().substring(0, 1).toUpperCase(Locale.ROOT)
                            + rule.meaning().substring(1);
            };
        }

        /** The hour as files spell it: {@code 17:00}, {@code close of business}; empty without a day. */
        public String hour() {
            return deadline.map(Line::hour).orElse("");
        }

        /** Whether it ends with its day and at no hour that a law names. */
        public boolean endsWithTheDay() {
            return deadline.filter(Line::endsWithItsDay).isPresent();
        }

        private static boolean endsWithItsDay(Deadline deadline) {
            return switch (deadline.rule().time().kind()) {
                case END_OF_DAY -> true;
                case THAT_HOUR -> deadline.lastMoment().toLocalTime().equals(TimeOfDay.END_OF_DAY.time());
                case CLOCK, CLOSE_OF_BUSINESS -> false;
            };
        }

        /** An hour taken over from another deadline or an act is given as the clock shows it. */
        private static String hour(Deadline deadline) {
            LocalTime moment = deadline.lastMoment().toLocalTime();
            boolean taken = deadline.rule().time().kind() == TimeOfDay.Kind.THAT_HOUR;
            if (!taken) {
                return deadline.rule().time().spelled();
            }
            return endsWithItsDay(deadline) ? TimeOfDay.END_OF_DAY.spelled() : moment.toString();
        }

        /** Whether the law sets it, but a day cannot be told before an act is done or set down. */
        public boolean waitsForAnAct() {
            return deadline.isEmpty() && given.value() instanceof RuleValue.Dated;
        }
    }

    /** The deadlines in the order of the trade: registration, mail, notices and cures, decision, certification. */
    public static List<Line> of(DeadlineBook book) {
        List<Rule> rules = new ArrayList<>(ALWAYS.subList(0, 5));
        for (Ask ask : Ask.values()) {
            rules.add(Rule.notice(ask));
            rules.add(Rule.cure(ask));
        }
        rules.addAll(ALWAYS.subList(5, 7));
        Rule.all().stream()
                .filter(rule -> rule.type() == RuleType.DEADLINE && !rules.contains(rule))
                .forEach(rules::add);
        return rules.stream()
                .map(rule -> new Line(rule, book.pack().of(rule), book.of(rule)))
                .filter(line -> ALWAYS.contains(line.rule())
                        || line.given().value() instanceof RuleValue.Dated
                        || (isCure(line.rule()) && line.given().isKnown()))
                .toList();
    }

    private static boolean isCure(Rule rule) {
        return rule.key().startsWith("cure.") || rule.key().startsWith("notice.");
    }

    /** Those with a day, the earliest first; at the same moment in the order of the trade. */
    public static List<Line> inOrder(DeadlineBook book) {
        return of(book).stream()
                .filter(line -> line.deadline().isPresent())
                .sorted(Comparator.comparing(DeadlineList::moment))
                .toList();
    }

    private static LocalDateTime moment(Line line) {
        return line.deadline().orElseThrow().lastMoment();
    }
}
