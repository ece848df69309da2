package org.proviso.board.ui;

import java.util.List;
import java.util.Optional;
import org.proviso.board.BoardSession;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.ui.MessageLine;

/** Puts decided envelopes on the agenda of the session that is called: a board changes a decision only by a motion. */
final class AgendaOfDecided {

    private final BoardServices room;
    private final BoardActRunner steps;
    private final ElectionId election;

    AgendaOfDecided(BoardServices room, BoardActRunner steps, ElectionId election) {
        this.room = room;
        this.steps = steps;
        this.election = election;
    }

    void add(EnvelopeNumber number) {
        Optional<BoardSession> open = room.sessions().sessions(election).stream()
                .filter(session -> session.closedAt() == null)
                .reduce((first, second) -> second);
        if (open.isEmpty()) {
            MessageLine.refused(
                    "No session is called. A decision is reopened, or let stand, by a motion in a session.");
            return;
        }
        steps.take(
                () -> room.agendas().addToAgenda(open.get().key(), List.of(number)),
                number + " added to the agenda of session " + open.get().key().sessionNo()
                        + ". A motion there reopens it or lets it stand.");
    }
}
