package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.AgendaLine;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.CastVote;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.VoteClosed;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;

/** A session of the board of three, in which everything that is ready is voted on in its groups. */
final class BoardMeeting {

    private static final List<String> MEMBERS = List.of("eve", "fay", "gil");

    private final Office office;
    private final String election;

    BoardMeeting(Office office, String election) {
        this.office = office;
        this.election = election;
    }

    /** Holds the session; how many envelopes it settled. */
    int hold(LocalDateTime when) {
        SessionKey session = open(when);
        as("eve", () -> accepted(office.the(AgendaService.class).addAllReady(session)));
        int settled = 0;
        for (List<AgendaLine> group : groups(session).values()) {
            settled += vote(session, group);
        }
        as(
                "eve",
                () -> accepted(office.the(BoardService.class)
                        .close(session, session(session).version())));
        return settled;
    }

    private SessionKey open(LocalDateTime when) {
        BoardService board = office.the(BoardService.class);
        BoardSession called = as(
                "eve",
                () -> accepted(board.callSession(
                        new CallSession(new ElectionId(election), BodyKind.BOARD, when, "Board room"))));
        as("eve", () -> accepted(board.open(called.key(), session(called.key()).version())));
        for (String member : MEMBERS) {
            as("eve", () -> accepted(board.recordArrival(called.key(), new UserName(member))));
        }
        return called.key();
    }

    private BoardSession session(SessionKey key) {
        return as("eve", () -> office.the(BoardService.class).session(key));
    }

    private Map<String, List<AgendaLine>> groups(SessionKey session) {
        Map<String, List<AgendaLine>> groups = new TreeMap<>();
        for (AgendaLine line : as("eve", () -> office.the(AgendaService.class).agenda(session))) {
            String group = line.item().standsAlone()
                    ? "alone " + line.item().envelopeNo()
                    : "group " + line.item().group();
            groups.computeIfAbsent(group, any -> new java.util.ArrayList<>()).add(line);
        }
        return groups;
    }

    private int vote(SessionKey session, List<AgendaLine> group) {
        MotionService motions = office.the(MotionService.class);
        Map<EnvelopeNumber, Integer> envelopes = new LinkedHashMap<>();
        group.forEach(line -> envelopes.put(line.item().envelopeNo(), line.now().version()));
        MotionKind kind = MotionKind.valueOf(group.get(0).item().proposed().name());
        Reason primary = group.get(0).item().primaryReason();
        Set<Reason> reasons = new LinkedHashSet<>();
        if (primary != null) {
            reasons.add(primary);
        }
        BoardMotion moved = as(
                "eve",
                () -> accepted(motions.move(new MoveMotion(
                        session,
                        kind,
                        envelopes,
                        Set.of(),
                        List.copyOf(reasons),
                        kind == MotionKind.REJECT ? "As proposed for each" : "",
                        ""))));
        BoardMotion put = as("fay", () -> accepted(motions.putToVote(moved.key(), moved.version())));
        BoardMotion voted = put;
        for (String member : MEMBERS) {
            voted = as("fay", () -> accepted(motions.vote(new CastVote(put.key(), new UserName(member), Vote.YES))));
        }
        int version = voted.version();
        VoteClosed closed = as("fay", () -> accepted(motions.close(put.key(), version)));
        if (closed instanceof VoteClosed.Settled settled) {
            return settled.now().size();
        }
        throw new AssertionError(kind + " of " + envelopes.keySet() + ": " + closed);
    }
}
