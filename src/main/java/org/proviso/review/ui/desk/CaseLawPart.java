package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.ContestsAtStake;
import org.proviso.ui.PageSection;
import org.proviso.ui.UsDates;

/** The right part: the eight questions of the law, what the voter may still cure, the contests at stake. */
final class CaseLawPart extends Div {

    private final OrderedList questions = new OrderedList();

    CaseLawPart(CasePageContext desk) {
        addClassName("part");
        addClassName("law");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "What the law asks");
        questions.addClassName("questions");
        boolean firstOpen = true;
        for (LawLine line : desk.file().law()) {
            LawRow row = new LawRow(desk, line, firstOpen && isOpen(line));
            firstOpen &= !isOpen(line);
            questions.add(new ListItem(row));
        }
        PageSection section = new PageSection("says", "What the law asks", questions);
        desk.file().report().asks().forEach(ask -> section.add(ask(ask)));
        add(section);
        desk.file().around().stake().ifPresent(stake -> {
            if (countsInPart(desk.file())) {
                addComponentAsFirst(stake(stake));
            } else {
                section.add(stake(stake));
            }
        });
    }

    /** Which contests count is then part of the outcome, and stands above the questions. */
    private static boolean countsInPart(CaseFile file) {
        return file.report().outlook().outcome().recommendation() == Recommendation.COUNT_IN_PART
                || file.work().decided().stream().anyMatch(decided -> decided.as() == DecisionOutcome.COUNT_IN_PART);
    }

    private static boolean isOpen(LawLine line) {
        return line.standing() == LawLine.Status.OPEN || line.standing() == LawLine.Status.DEFECT;
    }

    private static Paragraph ask(DueAsk ask) {
        Optional<LocalDateTime> until = ask.deadline().map(Deadline::lastMoment);
        Paragraph line = new Paragraph("The voter may " + ask.ask().words() + " "
                + until.map(at -> "until " + UsDates.near(at))
                        .orElse(
                                ask.untilTheMeeting()
                                        ? "until the board meets, on a date not set yet"
                                        : "until a date not known yet")
                + ". Send the notice at once.");
        line.addClassName("warn");
        return line;
    }

    private static Div stake(ContestsAtStake stake) {
        Div contests = new Div();
        contests.addClassName("stake");
        contests(contests, "Contests to count", stake.count());
        contests(contests, "Contests on this ballot not to count", stake.dropped());
        contests(contests, "The voter's contests missing from this ballot", stake.missing());
        return contests;
    }

    private static void contests(Div contests, String words, List<String> titles) {
        if (!titles.isEmpty()) {
            UnorderedList list = new UnorderedList();
            titles.forEach(title -> list.add(new ListItem(title)));
            contests.add(new Div(new H3(words + " (" + titles.size() + ")"), list));
        }
    }

    /** Moves the focus to the first open question, or to the top of the questions. */
    void focusWork() {
        questions
                .getElement()
                .executeJs("(this.querySelector('details.light > summary') ?? this.querySelector('summary'))?.focus()");
    }
}
