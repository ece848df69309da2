package org.proviso.board.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.shared.Registration;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionKind;
import org.proviso.board.SessionKey;
import org.proviso.board.record.SessionDetails;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;
import org.proviso.ui.Links;
import org.proviso.ui.NothingHereException;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The record of a session as a secretary keeps it: attendance, motions, seconds and votes said aloud, by numbers only. */
@Route(value = "board/record", layout = OfficeFrame.class)
@PageTitle("Record of a session · Proviso")
@PermitAll
public final class RecordView extends Composite<Div> implements HasUrlParameter<Integer> {

    private static final int EVERY_THREE_SECONDS = 3000;

    private final transient BoardServices room;
    private final transient BoardActRunner steps;
    private final ElectionId election;
    private final UserName reader;
    private final Div head = new Div();
    private final Div floor = new Div();
    private final Div agenda = new Div();
    private final AttendancePart attendance;
    private transient @Nullable SessionKey key;
    private String mark = "";
    private @Nullable Registration polling;

    RecordView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        this.election = workplace.electionId();
        room.access().demand(Permission.KEEP_RECORD);
        this.reader = room.access().signedIn().userName();
        this.steps = new BoardActRunner(this::refresh);
        attendance = new AttendancePart(room, reader, steps);
        floor.addClassName("floor");
        floor.getElement().setAttribute("aria-live", "polite");
        Div both = new Div(new Div(floor, agenda), attendance);
        both.addClassName("meeting");
        getContent().addClassNames("sheet", "board");
        getContent().add(head, both);
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
        event.getUI().setPollInterval(EVERY_THREE_SECONDS);
        polling = event.getUI().addPollListener(poll -> {
            if (!mark.equals(room.meetings().mark(Objects.requireNonNull(key)))) {
                refresh();
            }
        });
    }

    @Override
    protected void onDetach(DetachEvent event) {
        event.getUI().setPollInterval(-1);
        if (polling != null) {
            polling.remove();
        }
    }

    private void refresh() {
        SessionKey session = Objects.requireNonNull(key);
        mark = room.meetings().mark(session);
        SessionDetails now = room.meetings().details(session);
        boolean keeps =
                now.keepers().stream().anyMatch(keeper -> keeper.userName().equals(reader));
        head.removeAll();
        head.add(head(now, keeps));
        attendance.show(now);
        floor.removeAll();
        floor(now, keeps && now.session().isOpen());
        agenda.removeAll();
        agenda(now, keeps && now.session().isOpen() && now.floor() == null);
    }

    private PageHead head(SessionDetails now, boolean keeps) {
        int number = now.session().key().sessionNo();
        String state = now.session().closedAt() != null
                ? "The session is closed."
                : now.session().isOpen() ? "The session is open." : "The session is not open yet; a member opens it.";
        PageHead title = new PageHead(
                "Record of session " + number + " of " + now.session().body().words(),
                state + (keeps ? " You keep its record. You have no vote." : ""));
        Anchor minutes = Links.link("Minutes", "board/minutes/" + election + "/" + number);
        minutes.setRouterIgnore(true);
        title.beside(minutes);
        if (!keeps && now.session().closedAt() == null && !room.access().isPermitted(Permission.VOTE)) {
            title.beside(new ActButton("Keep the record of this session")
                    .first()
                    .does(() -> steps.take(
                            () -> room.records().keepRecord(now.session().key()), "You keep the record.")));
        }
        return title;
    }

    private void floor(SessionDetails now, boolean open) {
        SessionDetails.Floor moved = now.floor();
        floor.setClassName("waiting", moved != null);
        if (moved == null) {
            floor.add(new H2(now.ended().isEmpty() ? "No motion on the floor" : "Last motion"));
            now.ended().stream().findFirst().ifPresent(last -> floor.add(new Paragraph(String.valueOf(last.words()))));
            return;
        }
        BoardMotion motion = moved.motion();
        String seconder = moved.seconder() == null
                ? ""
                : ", seconded by " + moved.seconder().fullName();
        floor.add(
                new H2("Motion on the floor: " + BoardWords.moved(motion) + "."),
                new Paragraph("Moved by " + moved.mover().fullName() + seconder + ". " + motion.legalReference()),
                new Paragraph("Envelopes: " + BoardWords.numbers(motion.putNos(), 24) + "."));
        moved.forecast().forEach(sentence -> floor.add(new Paragraph(sentence)));
        if (motion.putAt() != null) {
            floor.add(new Paragraph(VotePart.whose(moved)));
        }
        if (open) {
            floor.add(motion.putAt() == null ? notPutYet(now, moved) : votes(moved));
        }
    }

    private Component notPutYet(SessionDetails now, SessionDetails.Floor moved) {
        BoardMotion motion = moved.motion();
        Div acts = FloorPart.acts(
                new ActButton("Open the vote")
                        .first()
                        .does(() -> steps.take(
                                () -> room.motions().putToVote(motion.key(), motion.version()), "The vote is open.")),
                FloorPart.withdraw(room, motion, steps));
        if (moved.seconder() == null) {
            Select<Member> seconder = new Select<>();
            seconder.setLabel("Seconded by");
            seconder.setItems(now.there().stream()
                    .filter(member -> !member.equals(moved.mover()))
                    .toList());
            seconder.setItemLabelGenerator(Member::fullName);
            seconder.addValueChangeListener(event -> {
                if (event.getValue() != null) {
                    steps.take(
                            () -> room.records()
                                    .second(
                                            motion.key(),
                                            motion.version(),
                                            event.getValue().userName()),
                            "Second recorded.");
                }
            });
            acts.add(seconder);
        }
        return acts;
    }

    private Component votes(SessionDetails.Floor moved) {
        Div acts = FloorPart.acts(FloorPart.withdraw(room, moved.motion(), steps));
        if (!moved.missing().isEmpty()) {
            acts.addComponentAsFirst(VotePart.everyoneYes(room, steps, moved));
            acts.addComponentAsFirst(new ActButton("Record a member's vote…")
                    .first()
                    .does(() -> new RecordVoteSheet(room, steps, moved.motion().key(), moved.missing()).open()));
        } else {
            acts.add(new Span("All votes are in. A member closes the vote."));
        }
        return acts;
    }

    private void agenda(SessionDetails now, boolean open) {
        agenda.add(new H2("Agenda"));
        List<AgendaGroup> groups = AgendaGroup.of(now);
        for (AgendaGroup group : groups) {
            agenda.add(line(
                    BoardWords.mark(group.outcome()),
                    BoardWords.numbers(group.numbers(), 24) + ": " + BoardWords.because(group.reason()),
                    open
                            ? List.of(record(now, group.envelopes(), List.of(group.kind()), group.reasons()))
                            : List.of()));
        }
        List<SessionDetails.Item> alone = AgendaGroup.alone(now);
        for (SessionDetails.Item item : alone) {
            Reason reason = item.item().primaryReason();
            agenda.add(line(
                    item.item().proposed() == null
                            ? new Span("Decided")
                            : BoardWords.mark(item.item().proposed()),
                    item.item().envelopeNo() + (reason == null ? "" : ": " + reason.words()),
                    open
                            ? List.of(record(
                                    now,
                                    Map.of(item.item().envelopeNo(), item.version()),
                                    kinds(item),
                                    reason == null ? List.of() : List.of(reason)))
                            : List.of()));
        }
        if (groups.isEmpty() && alone.isEmpty()) {
            agenda.add(new Paragraph("Nothing is left on the agenda."));
        }
    }

    private static List<MotionKind> kinds(SessionDetails.Item item) {
        return item.state() == CaseState.DECIDED
                ? List.of(MotionKind.REOPEN, MotionKind.LET_STAND)
                : List.of(MotionKind.COUNT, MotionKind.COUNT_IN_PART, MotionKind.REJECT, MotionKind.TABLE);
    }

    private static Div line(Component mark, String words, List<Component> acts) {
        Div right = new Div();
        right.addClassName("acts");
        right.add(acts);
        Div line = new Div(mark, new Span(words), right);
        line.addClassName("group-head");
        return line;
    }

    private Component record(
            SessionDetails now,
            Map<org.proviso.core.EnvelopeNumber, Integer> envelopes,
            List<MotionKind> kinds,
            List<Reason> reasons) {
        SessionKey session = now.session().key();
        return new ActButton("Record a motion…")
                .does(() -> new RecordMotionSheet(
                                session,
                                envelopes,
                                kinds,
                                (move, mover) -> steps.sheet(
                                        () -> room.records().move(move, mover.userName()), "Motion recorded."))
                        .open(
                                now.there(),
                                reasons,
                                String.join("; ", room.ready().references(election, envelopes.keySet()))));
    }
}
