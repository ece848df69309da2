package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import java.util.ArrayList;
import java.util.List;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.RecordRecusal;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.board.record.SessionDetails;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
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

    /** A motion can be made only when none is on the floor, and only by a member present. */
    boolean mayMove(SessionDetails meeting) {
        return meeting.session().isOpen() && meeting.floor() == null && meeting.isThere(new UserName(reader));
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
        String words = kinds.contains(MotionKind.REOPEN) ? "Move to reopen or let stand…" : "Move…";
        return EnvelopeButtons.button(
                        words,
                        line.envelopeNo(),
                        () -> sheet(meeting.session().key()).one(line, kinds))
                .first();
    }

    private MotionSheet sheet(SessionKey key) {
        return MotionSheet.toMove(
                wanted -> steps.sheet(() -> move(key, wanted), "Motion made: " + words(wanted)),
                wanted -> steps.sheet(
                        () -> move(key, wanted)
                                .then(motion -> room.motions().putToVote(motion.key(), motion.version())),
                        "The vote is open: " + words(wanted)));
    }

    private ActResult<BoardMotion> move(SessionKey key, MotionSheet.MotionInput wanted) {
        return room.motions()
                .move(new MoveMotion(
                        key,
                        wanted.kind(),
                        wanted.envelopes(),
                        wanted.contests(),
                        wanted.reasons(),
                        wanted.reference(),
                        wanted.because()));
    }

    private static String words(MotionSheet.MotionInput wanted) {
        return BoardWords.moved(wanted.kind(), wanted.envelopes().size(), wanted.reasons()) + ".";
    }

    /** Buttons for an envelope in a group. */
    List<Component> ofGroup(SessionDetails meeting, EnvelopeSummary line) {
        List<Component> buttons = new ArrayList<>();
        if (meeting.session().closedAt() == null) {
            buttons.add(
                    EnvelopeButtons.button("Pull out", line.envelopeNo(), () -> pullOut(meeting, line.envelopeNo())));
        }
        buttons.addAll(standAside(meeting, line));
        return buttons;
    }

    /** Buttons for an individual envelope. */
    List<Component> ofOne(SessionDetails meeting, EnvelopeSummary line) {
        List<Component> buttons = new ArrayList<>(standAside(meeting, line));
        if (meeting.session().isOpen() && line.state() == CaseState.READY) {
            buttons.add(EnvelopeButtons.button("Send back…", line.envelopeNo(), () -> sendBack(meeting, line)));
        }
        return buttons;
    }

    private void pullOut(SessionDetails meeting, EnvelopeNumber envelopeNo) {
        int version = meeting.agenda().stream()
                .filter(itemDetails -> itemDetails.item().envelopeNo().equals(envelopeNo))
                .findFirst()
                .orElseThrow()
                .item()
                .version();
        steps.take(
                () -> room.agendas().removeFromGroup(meeting.session().key(), envelopeNo, version),
                envelopeNo
                        + " pulled out of its group. It is listed under Individual envelopes and voted on separately.");
    }

    private List<Component> standAside(SessionDetails meeting, EnvelopeSummary line) {
        boolean aside = meeting.aside().stream()
                .anyMatch(recusedMember -> recusedMember.person().userName().equals(new UserName(reader))
                        && recusedMember.envelopeNo().equals(line.envelopeNo()));
        return meeting.session().isOpen() && meeting.isThere(new UserName(reader)) && !aside
                ? List.of(EnvelopeButtons.button("Recuse…", line.envelopeNo(), () -> askAside(meeting, line)))
                : List.of();
    }

    private void askAside(SessionDetails meeting, EnvelopeSummary line) {
        SessionKey key = meeting.session().key();
        ReasonSheet.ask(
                "Recuse yourself from envelope " + line.envelopeNo(),
                "You will not move, second or vote on this envelope in this session, and you do not count toward its"
                        + " quorum. If it is in a group, pull it out so that you can vote on the others.",
                "Reason",
                "Recuse",
                ground -> steps.sheet(
                        () -> room.sessions()
                                .recuse(new RecordRecusal(key, line.envelopeNo(), new UserName(reader), ground)),
                        "You are recused from envelope " + line.envelopeNo() + "."));
    }

    private void sendBack(SessionDetails meeting, EnvelopeSummary line) {
        EnvelopeKey key = new EnvelopeKey(meeting.session().key().electionId(), line.envelopeNo());
        ReasonSheet.ask(
                "Send envelope " + line.envelopeNo() + " back to the reviewers",
                "The case goes back to the reviewers, undecided, with your note.",
                "What the reviewers should check",
                "Send back",
                note -> steps.sheet(
                        () -> room.decisions().sendBack(key, line.version(), note),
                        "Envelope " + line.envelopeNo() + " sent back to the reviewers."));
    }
}
