package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import org.proviso.board.MotionKind;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.board.record.SessionDetails;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseState;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The agenda: groups that are moved together, then individual envelopes. */
@Tag("section")
final class AgendaPart extends HtmlContainer {

    private final BoardServices room;
    private final AgendaActs acts;
    private final BoardActRunner steps;

    AgendaPart(BoardServices room, String reader, BoardActRunner steps) {
        this.room = room;
        this.acts = new AgendaActs(room, reader, steps);
        this.steps = steps;
        addClassName("agenda");
    }

    void show(SessionDetails meeting) {
        removeAll();
        List<AgendaGroup> groups = AgendaGroup.of(meeting);
        List<SessionDetails.Item> alone = AgendaGroup.alone(meeting);
        add(new H2("Agenda"));
        besides(meeting);
        if (groups.isEmpty() && alone.isEmpty()) {
            add(new Paragraph(
                    meeting.agenda().isEmpty()
                            ? "Nothing is on the agenda yet. Envelopes appear here after a reviewer proposes an outcome."
                            : "Every envelope on the agenda is settled."));
        }
        boolean may = acts.mayMove(meeting);
        ElectionId election = meeting.session().key().electionId();
        for (AgendaGroup group : groups) {
            add(new GroupPart(
                    group,
                    numbers -> room.ready().lines(election, numbers),
                    line -> acts.ofGroup(meeting, line),
                    may ? List.of(acts.moveGroup(meeting, group)) : List.of()));
        }
        alone(meeting, alone, may);
        decided(meeting);
    }

    private void besides(SessionDetails meeting) {
        if (meeting.session().closedAt() != null || meeting.readyBesides() < 1) {
            return;
        }
        String verb = meeting.readyBesides() == 1 ? " is" : " are";
        add(FloorPart.acts(
                new Paragraph(
                        UsDates.count(meeting.readyBesides(), "envelope") + verb + " ready but not on this agenda."),
                new ActButton("Add all ready envelopes")
                        .does(() -> steps.take(
                                () -> room.agendas()
                                        .addAllReady(meeting.session().key()),
                                "All ready envelopes added to the agenda."))));
    }

    private void alone(SessionDetails meeting, List<SessionDetails.Item> alone, boolean may) {
        if (alone.isEmpty()) {
            return;
        }
        add(new H2("Individual envelopes"));
        List<EnvelopeNumber> numbers = alone.stream()
                .map(itemDetails -> itemDetails.item().envelopeNo())
                .limit(50)
                .toList();
        for (EnvelopeSummary line : room.ready().lines(meeting.session().key().electionId(), numbers)) {
            List<Component> buttons = new ArrayList<>(acts.ofOne(meeting, line));
            if (may) {
                buttons.add(0, acts.moveOne(meeting, line, kinds(line)));
            }
            add(new DecidingEnvelopePart(line, true, buttons));
        }
        if (alone.size() > numbers.size()) {
            add(new Paragraph(
                    "The first 50 of " + alone.size() + " are shown. The others appear as these are settled."));
        }
    }

    private static List<MotionKind> kinds(EnvelopeSummary line) {
        return line.state() == CaseState.DECIDED
                ? List.of(MotionKind.REOPEN, MotionKind.LET_STAND)
                : List.of(MotionKind.COUNT, MotionKind.COUNT_IN_PART, MotionKind.REJECT, MotionKind.TABLE);
    }

    private void decided(SessionDetails meeting) {
        long settled = meeting.agenda().stream()
                .filter(itemDetails ->
                        itemDetails.state() == CaseState.DECIDED || itemDetails.state() == CaseState.RELEASED)
                .filter(itemDetails -> itemDetails.item().proposed() != null)
                .count();
        if (settled > 0) {
            add(new Paragraph(UsDates.count(settled, "envelope") + " on this agenda " + (settled == 1 ? "is" : "are")
                    + " decided."));
        }
    }
}
