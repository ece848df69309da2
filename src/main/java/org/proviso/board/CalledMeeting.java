package org.proviso.board;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.election.BoardMeetingService;
import org.springframework.stereotype.Component;

/**
 * Tells the rules when the decider meets next: the first session that is called for this day or a later one, or sits. With
 * none ahead the last one stands. Of two bodies it is the later one, once both are called: no source read settles it.
 */
@Component
class CalledMeeting {

    private final SessionStore sessions;
    private final BoardClock clock;
    private final BoardMeetingService meetings;

    CalledMeeting(SessionStore sessions, BoardClock clock, BoardMeetingService meetings) {
        this.sessions = sessions;
        this.clock = clock;
        this.meetings = meetings;
    }

    /** After a session was called, moved or closed; whoever calls holds the sessions. */
    void tell(ElectionId electionId) {
        ElectionAsOf now = clock.electionAsOfNow(electionId);
        List<BodyKind> bodies = now.decider().map(BodyKind::forDecider).orElse(List.of());
        List<LocalDateTime> meetings = bodies.stream()
                .flatMap(body -> next(sessions.all(electionId), body, now.at()).stream())
                .toList();
        this.meetings.set(
                electionId,
                meetings.size() < bodies.size()
                        ? Optional.empty()
                        : meetings.stream().max(Comparator.naturalOrder()));
    }

    /** A session that an official opened to decide at once was never called ahead, so nobody could be told of it. */
    static Optional<LocalDateTime> next(List<BoardSession> all, BodyKind body, LocalDateTime now) {
        List<BoardSession> called = all.stream()
                .filter(session -> session.body() == body && session.calledAhead())
                .toList();
        return called.stream()
                .filter(session -> isAhead(session, now))
                .map(BoardSession::calledFor)
                .min(Comparator.naturalOrder())
                .or(() -> called.stream().map(BoardSession::calledFor).max(Comparator.naturalOrder()));
    }

    private static boolean isAhead(BoardSession session, LocalDateTime now) {
        return session.closedAt() == null
                && (session.openedAt() != null
                        || !session.calledFor().toLocalDate().isBefore(now.toLocalDate()));
    }
}
