package org.proviso.board;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Sessions of the deciding body: called, opened, who is there, who stands aside, closed. Any decider may note it; the
 * ledger says who did. What is not legal now comes back as a value; an act that comes with an old version of the
 * session is refused with {@link org.springframework.dao.OptimisticLockingFailureException}. Thread-safe.
 */
@Service
@Validated
public class BoardService {

    private final SessionStore sessions;
    private final MemberStore members;
    private final AgendaStore agenda;
    private final MotionStore motions;
    private final AccessService access;
    private final BoardClock clock;
    private final BoardLedger ledger;
    private final SeatChecks seating;
    private final ApplicationEventPublisher rooms;

    BoardService(
            SessionStore sessions,
            MemberStore members,
            AgendaStore agenda,
            MotionStore motions,
            AccessService access,
            BoardClock clock,
            BoardLedger ledger,
            SeatChecks seating,
            ApplicationEventPublisher rooms) {
        this.sessions = sessions;
        this.members = members;
        this.agenda = agenda;
        this.motions = motions;
        this.access = access;
        this.clock = clock;
        this.ledger = ledger;
        this.seating = seating;
        this.rooms = rooms;
    }

    /** Calls a session of a body that the rule pack lets decide. */
    @Transactional
    public BoardActResult<BoardSession> callSession(@Valid CallSession command) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        ElectionAsOf election = clock.electionAsOfNow(command.electionId());
        return BoardActResult.unless(election.noSuchBody(command.body()), () -> {
            DecidingBody seats = command.body().seats(election.election());
            BoardSession called = sessions.insert(command, seats.quorum());
            Map<String, Object> what = Map.of(
                    "body", command.body().code(),
                    "called_for", command.calledFor().toString(),
                    "members", seats.members(),
                    "quorum", seats.quorum());
            record(decider, "session_called", called.key(), what);
            return announced(called);
        });
    }

    @Transactional
    public BoardActResult<BoardSession> open(SessionKey key, int version) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key).at(version);
        return BoardActResult.unless(SessionChecks.notYetOpened(session), () -> {
            sessions.open(key, clock.now());
            record(decider, "session_opened", key, Map.of());
            return announced(session(key));
        });
    }

    /** Notes a member as present from now on; whoever it is must be a decider, and be in no other session. */
    @Transactional
    public BoardActResult<BoardSession> recordArrival(SessionKey key, UserName userName) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lockAll(key.electionId()).stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(() -> SessionStore.unknown(key));
        Optional<Refusal> refusal = SessionChecks.open(session).or(() -> seating.refusal(session, userName));
        return BoardActResult.unless(refusal, () -> {
            members.arrive(key, userName, clock.now());
            record(decider, "member_arrived", key, member(userName));
            return session;
        });
    }

    @Transactional
    public BoardActResult<BoardSession> recordDeparture(SessionKey key, UserName userName) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key);
        Optional<Refusal> refusal =
                SessionChecks.open(session).or(() -> SessionChecks.present(members.present(key), userName));
        return BoardActResult.unless(refusal, () -> {
            members.leave(key, userName, clock.now());
            record(decider, "member_left", key, member(userName));
            return session;
        });
    }

    /** Notes that a member who is there stands aside on one envelope for this session. */
    @Transactional
    public BoardActResult<BoardSession> recuse(@Valid RecordRecusal command) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        SessionKey key = command.session();
        BoardSession session = sessions.lock(key);
        EnvelopeNumber envelope = command.envelopeNo();
        Optional<Refusal> refusal = SessionChecks.open(session)
                .or(() -> SessionChecks.present(members.present(key), command.userName()))
                .or(() -> SessionChecks.onAgenda(agenda.find(key, envelope), envelope))
                .or(() -> recusedBefore(command));
        return BoardActResult.unless(refusal, () -> {
            members.recuse(command, clock.now());
            Map<String, Object> what = Map.of(
                    "member", ledger.pseudonym(command.userName()),
                    "ground", ledger.hash(key, envelope, command.ground()));
            ledger.record(decider, "member_recused", key, envelope.value(), what);
            return session;
        });
    }

    private Optional<Refusal> recusedBefore(RecordRecusal command) {
        boolean before = members.recused(command.session())
                .getOrDefault(command.userName(), Set.of())
                .contains(command.envelopeNo());
        return SessionChecks.refuse(
                before,
                Why.NOT_IN_THIS_STATE,
                command.userName() + " stands aside on " + command.envelopeNo() + " already.");
    }

    /** Ends a session; whoever is still there leaves with it. */
    @Transactional
    public BoardActResult<BoardSession> close(SessionKey key, int version) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key).at(version);
        Optional<Refusal> refusal =
                SessionChecks.open(session).or(() -> SessionChecks.nothingPending(motions.pending(key)));
        return BoardActResult.unless(refusal, () -> {
            members.allLeave(key, clock.now());
            sessions.close(key, clock.now());
            record(decider, "session_closed", key, Map.of());
            return announced(session(key));
        });
    }

    /** Every session of an election in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<BoardSession> sessions(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return sessions.all(electionId);
    }

    /** One session; {@link IllegalArgumentException} where there is none. */
    @Transactional(readOnly = true)
    public BoardSession session(SessionKey key) {
        access.demand(Permission.READ_FIGURES);
        return sessions.find(key).orElseThrow(() -> SessionStore.unknown(key));
    }

    /** Who came and went, in the order of their coming. */
    @Transactional(readOnly = true)
    public List<SessionMember> members(SessionKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return members.all(key);
    }

    @Transactional(readOnly = true)
    public List<Recusal> recusals(SessionKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return members.recusals(key);
    }

    private BoardSession announced(BoardSession session) {
        rooms.publishEvent(new SessionChanged(session));
        return session;
    }

    private Map<String, Object> member(UserName userName) {
        return Map.of("member", ledger.pseudonym(userName));
    }

    private void record(OfficeUser by, String act, SessionKey key, Map<String, Object> what) {
        ledger.record(by, act, key, key.subject(), what);
    }
}
