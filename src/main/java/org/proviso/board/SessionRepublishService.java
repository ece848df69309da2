package org.proviso.board;

import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Tells the later rooms again which sessions there are, for a room that makes its own table anew. Nothing is written. */
@Service
@BetweenRooms
public class SessionRepublishService {

    private final SessionStore sessions;
    private final ApplicationEventPublisher rooms;

    SessionRepublishService(SessionStore sessions, ApplicationEventPublisher rooms) {
        this.sessions = sessions;
        this.rooms = rooms;
    }

    /** Announces every session of an election; they are held first, and then what the caller has to clear is cleared. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announceAll(ElectionId electionId, Runnable onceHeld) {
        List<BoardSession> held = sessions.lockAll(electionId);
        onceHeld.run();
        held.forEach(session -> rooms.publishEvent(new SessionChanged(session)));
    }
}
