package org.proviso.board.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.board.record.SessionDetails;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.VotingRules;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** What is next, attendance, quorum, and who is recused from which envelope. */
@Tag("section")
final class AttendancePart extends HtmlContainer {

    private static final int NEXT = 2;

    private final BoardServices room;
    private final UserName reader;
    private final BoardActRunner steps;

    AttendancePart(BoardServices room, UserName reader, BoardActRunner steps) {
        this.room = room;
        this.reader = reader;
        this.steps = steps;
        addClassName("presence");
    }

    void show(SessionDetails meeting) {
        removeAll();
        next(meeting);
        add(new H2("Attendance"), new Paragraph(quorum(meeting)));
        boolean open = meeting.session().isOpen();
        meeting.seated().forEach(seat -> add(seat(meeting, seat, open)));
        if (open) {
            arriving(meeting);
        }
        meeting.keepers().forEach(keeper -> add(new Paragraph("Record kept by " + keeper.fullName() + ", no vote.")));
        if (!meeting.votingRules().isEmpty()) {
            Div rules = new Div();
            meeting.votingRules().forEach(line -> rules.add(rule(line)));
            Details fold = new Details("Vote and quorum", rules);
            fold.addClassName("fold");
            add(fold);
        }
        if (!meeting.aside().isEmpty()) {
            add(new H2("Recused"));
            meeting.aside()
                    .forEach(recusedMember ->
                            add(new Paragraph(recusedMember.person().fullName() + ", envelope "
                                    + recusedMember.envelopeNo() + ": " + recusedMember.ground())));
        }
    }

    /** What the chair calls next: the first things on the agenda that are not on the floor. */
    private void next(SessionDetails meeting) {
        if (!meeting.session().isOpen()) {
            return;
        }
        Set<EnvelopeNumber> onTheFloor = meeting.floor() == null
                ? Set.of()
                : Set.copyOf(meeting.floor().motion().putNos());
        List<String> ahead = new ArrayList<>();
        AgendaGroup.of(meeting).stream()
                .map(group -> group.without(onTheFloor))
                .filter(group -> !group.envelopes().isEmpty())
                .forEach(group -> ahead.add(BoardWords.sentence(group.outcome().words()) + ", "
                        + UsDates.count(group.envelopes().size(), "envelope") + ": "
                        + BoardWords.because(group.reason())));
        AgendaGroup.alone(meeting).stream()
                .filter(item -> !onTheFloor.contains(item.item().envelopeNo()))
                .forEach(item -> ahead.add("Envelope " + item.item().envelopeNo() + ", individually"));
        add(new H2("Next"));
        ahead.stream().limit(NEXT).forEach(words -> add(new Paragraph(words)));
        if (ahead.size() > NEXT) {
            add(new Paragraph((ahead.size() - NEXT) + " more on the agenda."));
        } else if (ahead.isEmpty()) {
            add(new Paragraph("Nothing more on the agenda."));
        }
    }

    /** {@code To reject: 2 of 3 members.}, and where that is written. */
    private static Paragraph rule(VotingRules.Line line) {
        Span source = new Span(" (" + line.source() + ")");
        source.addClassName("soft");
        return new Paragraph(new Span(line.words()), source);
    }

    private static String quorum(SessionDetails meeting) {
        int there = meeting.there().size();
        int needed = meeting.session().quorum();
        String here = there + " of " + meeting.seats() + " members " + (there == 1 ? "is" : "are") + " present; ";
        return there >= needed
                ? here + needed + " needed for a quorum. The board can vote."
                : here + needed + " needed for a quorum. No vote can be closed yet.";
    }

    private Div seat(SessionDetails meeting, SessionDetails.Seat seat, boolean open) {
        Member person = seat.person();
        Span words = new Span(person.fullName()
                + (seat.left() == null
                        ? ", since " + UsDates.hour(seat.arrived().toLocalTime())
                        : ", left at " + UsDates.hour(seat.left().toLocalTime())));
        Div row = new Div(words);
        row.addClassName("seat");
        if (open && seat.left() == null) {
            boolean own = person.userName().equals(reader);
            ActButton leaves = new ActButton(own ? "Record my departure" : "Record departure")
                    .does(() -> steps.take(
                            () -> room.sessions()
                                    .recordDeparture(meeting.session().key(), person.userName()),
                            person.fullName() + " left the session."));
            leaves.getElement()
                    .setAttribute(
                            "aria-label", own ? "Record my departure" : "Record departure of " + person.fullName());
            row.add(leaves);
        }
        return row;
    }

    private void arriving(SessionDetails meeting) {
        if (!meeting.isThere(reader) && room.access().isPermitted(Permission.VOTE)) {
            add(FloorPart.acts(
                    new ActButton("Record my arrival").first().does(() -> arrive(meeting, reader, "You are"))));
        }
        Select<Member> other = new Select<>();
        other.setLabel("Record another member's arrival");
        other.setItems(meeting.absent().stream()
                .filter(person -> !person.userName().equals(reader))
                .toList());
        other.setItemLabelGenerator(Member::fullName);
        other.setPlaceholder("Choose a member");
        other.addValueChangeListener(event -> {
            if (event.getValue() != null && event.isFromClient()) {
                arrive(meeting, event.getValue().userName(), event.getValue().fullName() + " is");
            }
        });
        add(other);
    }

    private void arrive(SessionDetails meeting, UserName userName, String who) {
        steps.take(
                () -> room.sessions().recordArrival(meeting.session().key(), userName), who + " recorded as present.");
    }
}
