package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import java.util.ArrayList;
import java.util.List;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.RecordRecusal;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.board.record.SessionDetails;
import org.proviso.review.CaseKey;
import org.proviso.review.CaseState;
import org.proviso.ui.field.ActButton;

/** What a member can do with an envelope or a group of the agenda. */
final class AgendaActs {

    private final BoardServices room;
    private final String reader;
    private final BoardActRunner steps;

    AgendaActs(BoardServices room, String reader, BoardActRunner steps) {
        this.room = room;
        this.reader = reader;
        this.steps = steps;
    }

    /** Nothing is moved while a motion is on the floor, and only by who sits here. */
    boolean mayMove(SessionDetails meeting) {
        return meeting.session().isOpen() && meeting.floor() == null && meeting.isThere(reader);
    }

    ActButton moveGroup(SessionDetails meeting, AgendaGroup group) {
        SessionKey key = meeting.session().key();
        ActButton move = new ActButton("Move to " + group.kind().words() + "…")
                .first()
                .does(() -> sheet(key).group(group, room.ready().references(key.electionId(), group.numbers())));
        move.getElement()
                .setAttribute(
                        "aria-label", "Move to " + group.kind().words() + ": " + BoardWords.because(group.reason()));
        return move;
    }

    ActButton moveOne(SessionDetails meeting, EnvelopeSummary line, List<MotionKind> kinds) {
        String words = kinds.contains(MotionKind.REOPEN) ? "Move to open it again…" : "Move…";
        return EnvelopeButtons.button(
                        words,
                        line.envelopeNo(),
                        () -> sheet(meeting.session().key()).one(line, kinds))
                .first();
    }

    private MotionSheet sheet(SessionKey key) {
        return new MotionSheet(
                "move",
                wanted -> steps.sheet(
                        () -> room.motions()
                                .move(new MoveMotion(
                                        key,
                                        wanted.kind(),
                                        wanted.envelopes(),
                                        wanted.contests(),
                                        wanted.reasons(),
                                        wanted.reference(),
                                        wanted.because())),
                        "Moved: "
                                + BoardWords.moved(
                                        wanted.kind(), wanted.envelopes().size(), wanted.reasons()) + "."));
    }

    /** Beside an envelope of a group. */
    List<Component> ofGroup(SessionDetails meeting, EnvelopeSummary line) {
        List<Component> buttons = new ArrayList<>();
        if (meeting.session().closedAt() == null) {
            buttons.add(
                    EnvelopeButtons.button("Pull out", line.envelopeNo(), () -> pullOut(meeting, line.envelopeNo())));
        }
        buttons.addAll(standAside(meeting, line));
        return buttons;
    }

    /** Beside an envelope that stands alone. */
    List<Component> ofOne(SessionDetails meeting, EnvelopeSummary line) {
        List<Component> buttons = new ArrayList<>(standAside(meeting, line));
        if (meeting.session().isOpen() && line.state() == CaseState.READY) {
            buttons.add(EnvelopeButtons.button("Send back…", line.envelopeNo(), () -> sendBack(meeting, line)));
        }
        return buttons;
    }

    private void pullOut(SessionDetails meeting, String envelopeNo) {
        int version = meeting.agenda().stream()
                .filter(one -> one.item().envelopeNo().equals(envelopeNo))
                .findFirst()
                .orElseThrow()
                .item()
                .version();
        steps.take(
                () -> room.agendas().removeFromGroup(meeting.session().key(), envelopeNo, version),
                envelopeNo + " is pulled out. It stands under One by one, and is voted on by itself.");
    }

    private List<Component> standAside(SessionDetails meeting, EnvelopeSummary line) {
        boolean aside = meeting.aside().stream()
                .anyMatch(one -> one.person().userName().equals(reader)
                        && one.envelopeNo().equals(line.envelopeNo()));
        return meeting.session().isOpen() && meeting.isThere(reader) && !aside
                ? List.of(EnvelopeButtons.button("Stand aside…", line.envelopeNo(), () -> askAside(meeting, line)))
                : List.of();
    }

    private void askAside(SessionDetails meeting, EnvelopeSummary line) {
        SessionKey key = meeting.session().key();
        ReasonSheet.ask(
                "Stand aside on " + line.envelopeNo(),
                "You will not move, second or vote on this envelope in this session, and do not count toward the"
                        + " quorum for it. If it is in a group, pull it out, so that you can vote on the others.",
                "Why you stand aside",
                "Stand aside",
                ground -> steps.sheet(
                        () -> room.sessions().recuse(new RecordRecusal(key, line.envelopeNo(), reader, ground)),
                        "You stand aside on " + line.envelopeNo() + "."));
    }

    private void sendBack(SessionDetails meeting, EnvelopeSummary line) {
        CaseKey key = new CaseKey(meeting.session().key().electionId(), line.envelopeNo());
        ReasonSheet.ask(
                "Send " + line.envelopeNo() + " back",
                "The case goes back to the reviewers, undecided, with your note.",
                "What they should look at",
                "Send it back",
                note -> steps.sheet(
                        () -> room.decisions().sendBack(key, line.version(), note),
                        line.envelopeNo() + " is sent back."));
    }
}
