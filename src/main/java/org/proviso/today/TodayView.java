package org.proviso.today;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;
import org.proviso.review.counts.CaseCounts;
import org.proviso.review.counts.CaseCountsService;
import org.proviso.ui.Caution;
import org.proviso.ui.Links;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.OutcomeMark.Shape;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The start page: progress, what waits for the signed-in person, deadlines, totals out of balance. */
@Route(value = "", layout = OfficeFrame.class)
@PageTitle("Today · Proviso")
@PermitAll
public final class TodayView extends Composite<Div> {

    private final transient WorkingElection workplace;
    private final transient CaseCountsService tallies;
    private final transient WaitingWorkList waiting;
    private final transient UpcomingDates clocks;
    private final transient OutOfBalance sums;
    private final transient AccessService access;

    TodayView(
            WorkingElection workplace,
            CaseCountsService tallies,
            WaitingWorkList waiting,
            UpcomingDates clocks,
            OutOfBalance sums,
            AccessService access) {
        this.access = access;
        this.workplace = workplace;
        this.tallies = tallies;
        this.waiting = waiting;
        this.clocks = clocks;
        this.sums = sums;
        getContent().addClassName("sheet");
        workplace.election().ifPresentOrElse(this::show, this::showNone);
    }

    private void show(ElectionLine election) {
        LocalDateTime now = workplace.now();
        CaseCounts tally = tallies.of(election.id());
        OutOfBalance.Found found = sums.of(election.id());
        Div work = new Div(
                head(now, tally),
                outcomes(tally),
                new WaitingWorkPart(waiting.of(election, tally, found), election.zone()));
        Div side = new Div(
                new UpcomingDatesPart(clocks.ahead(election.id(), now), clocks.meeting(election.id(), now), now),
                new OutOfBalancePart(found, access.isPermitted(Permission.RECEIVE_BAGS)));
        side.addClassName("side");
        Div today = new Div(work, side);
        today.addClassName("today");
        getContent().add(today, new Caution());
    }

    private void showNone() {
        getContent()
                .add(
                        new PageHead(
                                "No election loaded",
                                "Load an election in Setup from its folder of files. In a demonstration, the sample is still"
                                        + " loading. Check again in a minute."),
                        new Paragraph(Links.link("Go to Setup", "set-up")));
    }

    private static PageHead head(LocalDateTime now, CaseCounts tally) {
        String went = tally.in(CaseState.SENT_ON) + tally.in(CaseState.ENDED) == 0
                ? ""
                : ", " + (tally.in(CaseState.SENT_ON) + tally.in(CaseState.ENDED)) + " sent on or ended";
        return new PageHead(
                UsDates.weekday(now.toLocalDate()) + ", " + UsDates.hour(now.toLocalTime()),
                String.format(
                        java.util.Locale.US,
                        "%s received, %,d decided%s, %,d to go.",
                        UsDates.count(tally.all(), "envelope"),
                        tally.settled(),
                        went,
                        tally.toGo()));
    }

    private static String number(long count) {
        return String.format(java.util.Locale.US, "%,d", count);
    }

    private static Component outcomes(CaseCounts tally) {
        Div line = new Div(
                new OutcomeMark(Shape.COUNT, number(tally.as(DecisionOutcome.COUNT)) + " counted"),
                new OutcomeMark(
                        Shape.COUNT_IN_PART, number(tally.as(DecisionOutcome.COUNT_IN_PART)) + " counted in part"),
                new OutcomeMark(Shape.REJECT, number(tally.as(DecisionOutcome.REJECT)) + " rejected"));
        Span rest = new Span(String.format(
                java.util.Locale.US,
                "%,d not yet decided, %,d of them ready for the decider",
                tally.toGo(),
                tally.in(CaseState.READY)));
        rest.addClassName("soft");
        line.add(rest);
        line.addClassName("outcomes");
        return line;
    }
}
