package org.proviso.board.ui;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionKind;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.UsDates;

/** What the pages of the board say in the same words. */
final class BoardWords {

    private BoardWords() {}

    /** {@code Count in part}, with its mark. */
    static OutcomeMark mark(DecisionOutcome outcome) {
        return new OutcomeMark(OutcomeMark.Shape.valueOf(outcome.name()), sentence(outcome.words()));
    }

    /** With a capital first letter. */
    static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** What is moved: {@code reject 3 envelopes: the voter is not registered}. */
    static String moved(MotionKind kind, int envelopes, List<Reason> reasons) {
        String why = reasons.stream().map(Reason::words).collect(Collectors.joining("; "));
        String number = UsDates.count(envelopes, "envelope");
        String what = switch (kind) {
            case COUNT_IN_PART -> "count " + number + " in part";
            case LET_STAND -> "let the decision on " + number + " stand";
            case COUNT, REJECT, TABLE, REOPEN -> kind.words() + " " + number;
        };
        return what + (why.isEmpty() ? "" : ": " + why);
    }

    static String moved(BoardMotion motion) {
        return moved(motion.kind(), motion.putNos().size(), motion.reasons());
    }

    /** What will be recorded, and what it means for the voters. */
    static String recorded(MotionKind kind, int envelopes, List<Reason> reasons) {
        return sentence(moved(kind, envelopes, reasons)) + ". " + follows(kind, envelopes);
    }

    private static String follows(MotionKind kind, int envelopes) {
        String voters = envelopes == 1 ? "The voter" : "The voters";
        return switch (kind) {
            case COUNT -> voters + " will be told that the ballot counts.";
            case COUNT_IN_PART -> voters + " will be told which contests count, with the reason.";
            case REJECT -> voters + " will be told, with the reason.";
            case TABLE -> "Nothing is decided. The envelopes stay ready for a later session.";
            case LET_STAND -> "The decision stands although a newer record contradicts it.";
            case REOPEN -> "The decision is set aside, and the case goes back to the reviewers.";
        };
    }

    /** {@code Ann, Bob and Cy}. */
    static String names(List<Member> people) {
        List<String> names = people.stream().map(Member::fullName).toList();
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** A consent group's heading after its mark. */
    static String because(@Nullable Reason reason) {
        return reason == null ? "no defects" : reason.words();
    }

    /** The first numbers of a long list, and how many more. */
    static String numbers(List<EnvelopeNumber> numbers, int shown) {
        int more = numbers.size() - shown;
        return Key.join(", ", more > 0 ? numbers.subList(0, shown) : numbers)
                + (more > 0 ? " and " + more + " more" : "");
    }
}
