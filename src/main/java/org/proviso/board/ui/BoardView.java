package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.proviso.access.Permission;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.agenda.ReadyGroup;
import org.proviso.core.ElectionId;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The board: its sessions, what is ready for it, and what was decided. */
@Route(value = "board", layout = OfficeFrame.class)
@PageTitle("Board · Proviso")
@PermitAll
public final class BoardView extends Composite<Div> {

    private final transient BoardServices room;
    private final transient WorkingElection workplace;
    private final ElectionId election;
    private final boolean decides;

    BoardView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        this.workplace = workplace;
        this.election = workplace.electionId();
        room.access().demand(Permission.READ_FIGURES);
        this.decides = room.access().isPermitted(Permission.DECIDE);
        getContent().addClassNames("sheet", "board");
        List<BodyKind> bodies = room.ready().bodies(election);
        boolean alone = bodies.equals(List.of(BodyKind.OFFICIAL));
        getContent().add(head(bodies, alone), sessions(), ready(), decided(), new Caution());
    }

    private PageHead head(List<BodyKind> bodies, boolean alone) {
        PageHead head = new PageHead(
                "Board",
                alone
                        ? "Under the rule pack, one official decides. Each decision is recorded the way a session's is."
                        : "Under the rule pack, the board decides by a vote in session. A decision takes effect on the vote.");
        if (decides && alone) {
            head.beside(Links.link("Decide ready envelopes", "board/official"));
            if (room.sessions().deadlinesRunToTheMeeting(election)) {
                head.beside(call(bodies));
            }
        } else if (decides && !bodies.isEmpty()) {
            head.beside(call(bodies).first());
        }
        return head;
    }

    private ActButton call(List<BodyKind> bodies) {
        return new ActButton("Call a session…").does(() -> new CallSessionSheet(room, workplace, bodies).open());
    }

    private Component ready() {
        List<ReadyGroup> groups = room.ready().groups(election);
        Div part = new Div(new H2("Ready for the decider"));
        if (groups.isEmpty()) {
            part.add(
                    new Paragraph(
                            "No envelopes are ready. A case appears here after a reviewer proposes an outcome and,"
                                    + " for anything less than a full count or against the rules' answer, a second reviewer agrees."));
            return part;
        }
        part.add(
                ready(groups.subList(0, Math.min(groups.size(), 40))),
                DownloadLinks.of(
                        "Ready for the decider",
                        election,
                        () -> ready(room.ready().groups(election))));
        return part;
    }

    private static PlainTable ready(List<ReadyGroup> groups) {
        PlainTable table = new PlainTable("Ready for the decider", "Proposed", "Main reason", "Envelopes");
        for (ReadyGroup group : groups) {
            table.row(List.of(
                    BoardWords.mark(group.outcome()),
                    new Span(BoardWords.because(group.reason())
                            + (group.alone() ? "; differs from the recommendation, decided individually" : "")),
                    number(group.envelopes().size())));
        }
        return table.figures("Envelopes");
    }

    private Component decided() {
        Map<DecisionOutcome, Integer> counts = room.decisions().counts(election);
        Div part = new Div(new H2("Decided"));
        Div marks = new Div();
        marks.addClassName("outcomes");
        for (DecisionOutcome outcome : DecisionOutcome.values()) {
            marks.add(new Span(BoardWords.mark(outcome), new Span(" " + counts.getOrDefault(outcome, 0))));
        }
        part.add(marks);
        if (room.access().isPermitted(Permission.SEE_WHOLE_CASE)) {
            part.add(new Paragraph(Links.link("View all decisions", "board/settled")));
        }
        return part;
    }

    private Component sessions() {
        List<BoardSession> all = newestFirst();
        Div part = new Div(new H2("Sessions"));
        if (all.isEmpty()) {
            part.add(new Paragraph("No sessions called yet. A member of the deciding body calls one."));
            return part;
        }
        part.add(sessions(all), DownloadLinks.of("Sessions, newest first", election, () -> sessions(newestFirst())));
        return part;
    }

    private List<BoardSession> newestFirst() {
        List<BoardSession> all = new ArrayList<>(room.sessions().sessions(election));
        Collections.reverse(all);
        return all;
    }

    private PlainTable sessions(List<BoardSession> all) {
        PlainTable table = new PlainTable("Sessions, newest first", "Session", "Called for", "Place", "State");
        all.forEach(session -> table.row(List.of(
                name(session),
                new Span(UsDates.near(session.calledFor())),
                new Span(session.place()),
                new Span(state(session)))));
        return table;
    }

    private Component name(BoardSession session) {
        String words =
                "Session " + session.key().sessionNo() + " of " + session.body().words();
        if (decides) {
            return Links.link(words, "board/session/" + session.key().sessionNo());
        }
        return room.access().isPermitted(Permission.KEEP_RECORD)
                ? Links.link(words, "board/record/" + session.key().sessionNo())
                : new Span(words);
    }

    private static String state(BoardSession session) {
        if (session.closedAt() != null) {
            return "closed";
        }
        return session.isOpen() ? "open" : "called, not open yet";
    }

    private static Span number(int number) {
        Span span = new Span(String.valueOf(number));
        span.addClassName("num");
        return span;
    }
}
