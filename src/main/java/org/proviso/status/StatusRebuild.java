package org.proviso.status;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.board.SessionRepublishService;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.review.news.CaseRepublishService;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes the look-up's tables anew from what review and board announce. It asks nobody's permission: for the service that
 * does, and for a verb of the shell, whose user holds the database anyway.
 */
@BetweenRooms
@Component
public class StatusRebuild {

    private final StatusLineStore lines;
    private final StatusSessionStore sessions;
    private final CaseRepublishService cases;
    private final SessionRepublishService boards;

    StatusRebuild(
            StatusLineStore lines,
            StatusSessionStore sessions,
            CaseRepublishService cases,
            SessionRepublishService boards) {
        this.lines = lines;
        this.sessions = sessions;
        this.cases = cases;
        this.boards = boards;
    }

    /**
     * Makes the lines of an election anew; how many there are. A line that reads as before keeps since when it does.
     * Sessions and cases are held meanwhile, in this order, as the board holds them.
     */
    @Transactional
    public int of(ElectionId electionId) {
        Map<String, List<StatusLine>> before = new HashMap<>();
        boards.announceAll(electionId, () -> sessions.empty(electionId));
        cases.announceAll(electionId, () -> {
            lines.all(electionId)
                    .forEach(line -> before.computeIfAbsent(line.keyHash(), any -> new ArrayList<>())
                            .add(line));
            lines.empty(electionId);
        });
        int count = 0;
        for (StatusLine line : lines.all(electionId)) {
            before.getOrDefault(line.keyHash(), List.of()).stream()
                    .filter(line::saysTheSame)
                    .findFirst()
                    .ifPresent(was -> lines.changedAt(line, was.changedAt()));
            count++;
        }
        return count;
    }
}
