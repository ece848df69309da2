package org.proviso.board.motion;

import jakarta.validation.Valid;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.ElectionAsOf;
import org.proviso.board.MemberStore;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionStore;
import org.proviso.board.agenda.AgendaService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.Vote;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;
import org.springframework.validation.annotation.Validated;

/**
 * Where one official decides: a session of one, with one motion and one vote a decision, so that the record reads as a
 * board's does. Thread-safe.
 */
@Service
@Validated
public class OfficialService {

    private final BoardService boards;
    private final AgendaService agendas;
    private final MotionService motions;
    private final AccessService access;
    private final BoardClock clock;
    private final MemberStore members;
    private final DecisionService decisions;
    private final SessionStore sessions;

    OfficialService(
            BoardService boards,
            AgendaService agendas,
            MotionService motions,
            AccessService access,
            BoardClock clock,
            MemberStore members,
            DecisionService decisions,
            SessionStore sessions) {
        this.boards = boards;
        this.agendas = agendas;
        this.motions = motions;
        this.access = access;
        this.clock = clock;
        this.members = members;
        this.decisions = decisions;
        this.sessions = sessions;
    }

    /**
     * Decides in the signed-in official's session of the day, which is opened if there is none. On a refusal nothing
     * is written at all, not even the session.
     */
    @Transactional
    public ActResult<VoteClosed> decide(@Valid DecideAsOfficial decision) {
        UserName official = access.demand(Permission.DECIDE).userName();
        // Sessions first, then cases, the head of the chain last: the acts below record themselves one by one.
        sessions.lockAll(decision.electionId());
        decisions.hold(decision.envelopes().keySet().stream()
                .map(envelope -> new EnvelopeKey(decision.electionId(), envelope))
                .toList());
        ActResult<VoteClosed> closed = decided(official, decision);
        if (closed.isRefused()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        }
        return closed;
    }

    private ActResult<VoteClosed> decided(UserName official, DecideAsOfficial decision) {
        return today(official, decision.electionId())
                .map(BoardSession::key)
                .then(session -> agendas.addToAgenda(
                                session, decision.envelopes().keySet())
                        .then(listed -> motions.move(decision.in(session))))
                .then(motion -> motions.putToVote(motion.key(), motion.version()))
                .then(put -> motions.vote(new CastVote(put.key(), official, Vote.YES)))
                .then(voted -> motions.close(voted.key(), voted.version()));
    }

    /** The session in which the official sits today; one left open from an earlier day is closed. */
    private ActResult<BoardSession> today(UserName official, ElectionId electionId) {
        ElectionAsOf now = clock.electionAsOfNow(electionId);
        for (int number : members.sessionsWith(electionId, official)) {
            BoardSession session = boards.session(new SessionKey(electionId, number));
            if (session.body() == BodyKind.OFFICIAL
                    && session.calledFor().toLocalDate().equals(now.at().toLocalDate())) {
                return ActResult.accepted(session);
            }
            ActResult<BoardSession> closed = boards.close(session.key(), session.version());
            if (closed.isRefused()) {
                return closed;
            }
        }
        CallSession call = new CallSession(
                electionId, BodyKind.OFFICIAL, now.at(), now.election().office().name());
        return boards.sitAtOnce(call)
                .then(called -> boards.open(called.key(), called.version()))
                .then(opened -> boards.recordArrival(opened.key(), official));
    }
}
