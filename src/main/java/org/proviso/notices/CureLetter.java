package org.proviso.notices;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proviso.core.Election;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;

/**
 * What a voter is told of what may still be brought. The check list is common practice: what is missing, what to bring,
 * where and how, the last day with weekday and hour, what happens otherwise, help, and that it is free.
 */
final class CureLetter {

    static final String SUBJECT = "Action needed on your provisional ballot";

    private CureLetter() {}

    static List<String> paragraphs(Notice notice, Election election, Optional<Deadline> until, DeadlineBook book) {
        AskWords words = AskWords.of(notice.asked(), notice.askedBecause(), book.pack());
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add("We have your provisional ballot. We cannot count it yet. " + words.missing());
        paragraphs.add("What to do: " + words.toDo());
        paragraphs.add(lastDay(notice, election, until, book));
        paragraphs.add(AskWords.where(notice.asked(), election, book.pack()));
        paragraphs.add("If we do not hear from you in time, your ballot may not count.");
        law(notice, book).ifPresent(paragraphs::add);
        paragraphs.add(LetterParts.HELP);
        paragraphs.add(LetterParts.objections(election));
        return paragraphs;
    }

    /** What was brought is judged by the stamp of its arrival, so a postmark is not enough. */
    private static String lastDay(Notice notice, Election election, Optional<Deadline> until, DeadlineBook book) {
        if (book.waitsForTheMeeting(notice.asked())) {
            return "Deadline: it must reach us before the board meets. The date is not set yet. Do this as soon as you can."
                    + " " + LetterParts.callForTheDate(election) + " A postmark is not enough.";
        }
        String meeting = book.runsToTheMeeting(notice.asked())
                ? " The board meets then. " + LetterParts.callForTheDate(election)
                : "";
        return until.map(deadline -> "Deadline: it must reach us by " + LetterParts.moment(deadline.lastMoment()) + "."
                        + meeting + " A postmark is not enough.")
                .orElse("Do this as soon as you can. Call us to ask for the deadline.");
    }

    private static Optional<String> law(Notice notice, DeadlineBook book) {
        ResolvedRule given = book.pack().of(Rule.cure(notice.asked()));
        return given.isKnown() ? Optional.of("The law: " + given.reference().words() + ".") : Optional.empty();
    }
}
