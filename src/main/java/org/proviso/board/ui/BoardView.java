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
import org.proviso.access.Act;
import org.proviso.board.BoardSession;
import org.proviso.board.Body;
import org.proviso.board.ReadyGroup;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.ui.ActButton;
import org.proviso.ui.Caution;
import org.proviso.ui.Links;
import org.proviso.ui.OfficeFrame;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.Workplace;

/** The board: its sessions, what is ready for it, and what was decided. */
@Route(value = "board", layout = OfficeFrame.class)
@PageTitle("Board · Proviso")
@PermitAll
public final class BoardView extends Composite<Div> {

    private final transient BoardRoom room;
    private final transient Workplace workplace;
    private final String election;
    private final boolean decides;

    BoardView(BoardRoom room, Workplace workplace) {
        this.room = room;
        this.workplace = workplace;
        this.election = workplace.electionId();
        room.access().demand(Act.READ_FIGURES);
        this.decides = room.access().may(Act.DECIDE);
        getContent().addClassNames("sheet", "board");
        List<Body> bodies = room.ready().bodies(election);
        boolean alone = bodies.equals(List.of(Body.OFFICIAL));
        getContent().add(head(bodies, alone), sessions(), ready(), decided(), new Caution());
    }

    private PageHead head(List<Body> bodies, boolean alone) {
        PageHead head = new PageHead(
                "Board",
                alone
                        ? "Under the rule pack, one official decides. Each decision is recorded the way a session's is."
                        : "Under the rule pack, the board decides by a vote in session. A decision takes effect on the vote.");
        if (decides && alone) {
            head.beside(Links.link("Decide ready envelopes", "board/official"));
        } else if (decides && !bodies.isEmpty()) {
            head.beside(new ActButton("Call a session…")
                    .first()
                    .does(() -> new CallingSheet(room, workplace, bodies).open()));
        }
        return head;
    }

    private Component ready() {
        List<ReadyGroup> groups = room.ready().groups(election);
        Div part = new Div(new H2("Ready for the decider"));
        if (groups.isEmpty()) {
            part.add(new Paragraph(
                    "No envelopes are ready. A case appears here after a reviewer proposes an outcome and,"
                            + " for anything less than a full count, a second reviewer agrees."));
            return part;
        }
        PlainTable table = new PlainTable("Ready for the decider", "Proposed", "Main reason", "Envelopes");
        for (ReadyGroup group : groups.subList(0, Math.min(groups.size(), 40))) {
            table.row(List.of(
                    BoardWords.mark(group.outcome()),
                    new Span(BoardWords.because(group.reason())
                            + (group.alone() ? "; differs from the recommendation, decided individually" : "")),
                    number(group.envelopes().size())));
        }
        part.add(table);
        return part;
    }

    private Component decided() {
        Map<DecidedAs, Integer> counts = room.decisions().counts(election);
        Div part = new Div(new H2("Decided"));
        Div marks = new Div();
        marks.addClassName("outcomes");
        for (DecidedAs outcome : DecidedAs.values()) {
            marks.add(new Span(BoardWords.mark(outcome), new Span(" " + counts.getOrDefault(outcome, 0))));
        }
        part.add(marks);
        if (room.access().may(Act.SEE_WHOLE_CASE)) {
            part.add(new Paragraph(Links.link("View all decisions", "board/settled")));
        }
        return part;
    }

    private Component sessions() {
        List<BoardSession> all = new ArrayList<>(room.sessions().sessions(election));
        Collections.reverse(all);
        Div part = new Div(new H2("Sessions"));
        if (all.isEmpty()) {
            part.add(new Paragraph("No sessions called yet. A member of the deciding body calls one."));
            return part;
        }
        PlainTable table = new PlainTable("Sessions, newest first", "Session", "Called for", "Place", "State");
        all.forEach(session -> table.row(List.of(
                name(session),
                new Span(UsDates.near(session.calledFor())),
                new Span(session.place()),
                new Span(state(session)))));
        part.add(table);
        return part;
    }

    private Component name(BoardSession session) {
        String words =
                "Session " + session.key().sessionNo() + " of " + session.body().words();
        return decides ? Links.link(words, "board/session/" + session.key().sessionNo()) : new Span(words);
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
