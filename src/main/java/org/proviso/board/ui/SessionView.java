package org.proviso.board.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.shared.Registration;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
import org.proviso.board.BoardSession;
import org.proviso.board.SessionKey;
import org.proviso.board.record.SessionDetails;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.ui.Links;
import org.proviso.ui.NothingHereException;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** One meeting on one page: attendance, the motion on the floor, the votes, the agenda. Every member sees it change. */
@Route(value = "board/session", layout = OfficeFrame.class)
@PermitAll
public final class SessionView extends Composite<Div> implements HasUrlParameter<Integer>, HasDynamicTitle {

    private static final int EVERY_THREE_SECONDS = 3000;

    private final transient BoardServices room;
    private final transient BoardActRunner steps;
    private final ElectionId election;
    private final FloorPart floor;
    private final ConfirmVotesPart confirmations;
    private final AttendancePart presence;
    private final AgendaPart agenda;
    private final Div head = new Div();
    private transient @Nullable SessionKey key;
    private transient @Nullable SessionDetails shown;
    private String mark = "";
    private @Nullable Registration polling;

    SessionView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        this.election = workplace.electionId();
        room.access().demand(Permission.SEE_WHOLE_CASE);
        this.steps = new BoardActRunner(this::acted);
        UserName reader = room.access().signedIn().userName();
        floor = new FloorPart(room, reader.value(), steps);
        confirmations = new ConfirmVotesPart(room, steps);
        presence = new AttendancePart(room, reader, steps);
        agenda = new AgendaPart(room, reader.value(), steps);
        Div main = new Div(floor, confirmations, agenda);
        main.addClassName("meeting-main");
        Div both = new Div(main, presence);
        both.addClassName("meeting");
        getContent().addClassNames("sheet", "board");
        getContent().add(head, both);
    }

    @Override
    public String getPageTitle() {
        return "Session" + (key == null ? "" : " " + key.sessionNo()) + " · Proviso";
    }

    @Override
    public void setParameter(BeforeEvent event, Integer sessionNo) {
        key = new SessionKey(election, sessionNo);
        try {
            refresh();
        } catch (IllegalArgumentException e) {
            throw new NothingHereException("There is no session " + sessionNo + " of this election.");
        }
    }

    @Override
    protected void onAttach(AttachEvent event) {
        boolean closed = shown != null && shown.session().closedAt() != null;
        event.getUI().setPollInterval(closed ? -1 : EVERY_THREE_SECONDS);
        polling = event.getUI().addPollListener(poll -> look());
    }

    @Override
    protected void onDetach(DetachEvent event) {
        event.getUI().setPollInterval(-1);
        if (polling != null) {
            polling.remove();
        }
    }

    /** Checks for acts of other members. */
    private void look() {
        if (!mark.equals(room.meetings().mark(Objects.requireNonNull(key)))) {
            refresh();
        }
    }

    /** After one's own act; if it changed the floor, the focus moves there. */
    private void acted() {
        List<Object> before = floorOf(Objects.requireNonNull(shown));
        refresh();
        if (!before.equals(floorOf(Objects.requireNonNull(shown)))) {
            floor.lead();
        }
    }

    /** Redraws only what changed, so that no one loses their place because of someone else. */
    private void refresh() {
        SessionKey session = Objects.requireNonNull(key);
        SessionDetails before = shown;
        mark = room.meetings().mark(session);
        SessionDetails now = room.meetings().details(session);
        shown = now;
        confirmations.show(session);
        if (now.equals(before)) {
            return;
        }
        head.removeAll();
        head.add(head(now));
        if (before == null || !floorOf(before).equals(floorOf(now))) {
            floor.show(now);
        }
        presence.show(now);
        if (before == null || !agendaOf(before).equals(agendaOf(now))) {
            agenda.show(now);
        }
    }

    private static List<Object> floorOf(SessionDetails meeting) {
        return List.of(
                meeting.session(),
                meeting.there(),
                meeting.recusedFromFloor(),
                meeting.floor() == null ? "" : meeting.floor(),
                meeting.ended());
    }

    private static List<Object> agendaOf(SessionDetails meeting) {
        return List.of(
                meeting.session(),
                meeting.agenda(),
                meeting.there(),
                meeting.aside(),
                meeting.readyBesides(),
                meeting.floor() == null);
    }

    private PageHead head(SessionDetails meeting) {
        BoardSession session = meeting.session();
        int number = session.key().sessionNo();
        PageHead title =
                new PageHead("Session " + number + " of " + session.body().words(), lead(session));
        if (room.access().isPermitted(Permission.DECIDE) || room.access().isPermitted(Permission.SET_GATES)) {
            title.beside(outside("Room display", "room/" + room.display().link(session.key())));
        }
        title.beside(outside("Minutes", "board/minutes/" + session.key().electionId() + "/" + number));
        if (session.openedAt() == null) {
            title.beside(
                    new ActButton("Move session\u2026").does(() -> new MoveSessionSheet(room, steps, session).open()));
            title.beside(new ActButton("Open session")
                    .first()
                    .does(() -> steps.take(
                            () -> room.sessions().open(session.key(), session.version()), "The session is open.")));
        } else if (session.isOpen()) {
            title.beside(new ActButton("Close session…").does(() -> askClose(session)));
        } else if (room.access().isPermitted(Permission.DECIDE)) {
            title.beside(new ActButton("Reopen session…").does(() -> askReopen(session)));
        }
        return title;
    }

    private static Anchor outside(String words, String path) {
        Anchor link = Links.link(words, path);
        link.setRouterIgnore(true);
        return link;
    }

    private static String lead(BoardSession session) {
        String called = UsDates.weekday(session.calledFor().toLocalDate()) + ", "
                + UsDates.hour(session.calledFor().toLocalTime())
                + (session.place().isBlank() ? "" : ", " + session.place());
        String state = session.closedAt() != null ? "closed" : session.isOpen() ? "open" : "not open yet";
        return called + ". The session is " + state + ".";
    }

    private void askClose(BoardSession session) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Close the session?",
                "Close session",
                () -> steps.sheet(
                                () -> room.sessions().close(session.key(), session.version()), "The session is closed.")
                        .map(words -> sheet[0].refuse(words))
                        .orElse(true));
        sheet[0].addClassName("board-sheet");
        sheet[0].with("Everyone present is recorded as leaving. Decisions stand. A session closed by mistake"
                        + " can be reopened with a reason until the election is closed.")
                .open();
    }

    private void askReopen(BoardSession session) {
        ReasonSheet.ask(
                "Reopen the session?",
                "For a session that was closed by mistake. Record again who is present. Whether a meeting may go on after it"
                        + " was adjourned is for local law to say. Check with counsel.",
                "Reason to reopen the session",
                "Reopen session",
                because -> steps.sheet(
                        () -> room.sessions().reopen(session.key(), session.version(), because),
                        "The session is open again. Record who is present."));
    }
}
