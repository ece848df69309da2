package org.proviso.election;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.finding.DateWords;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * When the board meets, as the rules need it: some deadlines run until then. The board says it whenever a session is
 * called or closed. For services.
 */
@BetweenRooms
@Service
public class BoardMeetingService {

    private final BoardMeetingStore meetings;
    private final ElectionService elections;
    private final RulesService rules;
    private final ApplicationEventPublisher rooms;

    BoardMeetingService(
            BoardMeetingStore meetings,
            ElectionService elections,
            RulesService rules,
            ApplicationEventPublisher rooms) {
        this.meetings = meetings;
        this.elections = elections;
        this.rules = rules;
        this.rooms = rooms;
    }

    /** When the board meets on the county's clock, as far as it is called. */
    @Transactional(readOnly = true)
    public Optional<LocalDateTime> meeting(ElectionId electionId) {
        return meetings.find(electionId);
    }

    /**
     * Sets down when the board meets, empty where no meeting is called. Where a deadline of the election counts from it
     * and it is another time than before, the rooms hear of it. After a closing nothing moves.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void set(ElectionId electionId, Optional<LocalDateTime> meetsAt) {
        Optional<LocalDateTime> before = meetings.find(electionId);
        if (before.equals(meetsAt) || elections.isClosed(electionId)) {
            return;
        }
        meetsAt.ifPresentOrElse(moment -> meetings.put(electionId, moment), () -> meetings.remove(electionId));
        if (rules.book(electionId).needsTheMeeting()) {
            rooms.publishEvent(new BoardMeetingMoved(electionId, because(before, meetsAt)));
        }
    }

    private static String because(Optional<LocalDateTime> before, Optional<LocalDateTime> now) {
        String instead =
                before.map(moment -> " instead of " + DateWords.moment(moment)).orElse("");
        return now.map(moment -> "The board meets on " + DateWords.moment(moment) + instead + ".")
                .orElse("No meeting of the board is called any more" + instead + ".");
    }
}
