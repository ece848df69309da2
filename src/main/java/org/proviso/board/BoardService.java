package org.proviso.board;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Sessions of the deciding body: called, opened, who is there, who is recused, closed. Any decider may note it, and a
 * secretary attendance and recusals; the ledger says who did. What is not legal now comes back as a value; an act that comes with an old version of the
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
    private final CalledMeeting meeting;
    private final ActDoor door;

    BoardService(
            SessionStore sessions,
            MemberStore members,
            AgendaStore agenda,
            MotionStore motions,
            AccessService access,
            BoardClock clock,
            BoardLedger ledger,
            SeatChecks seating,
            CalledMeeting meeting,
            ActDoor door) {
        this.sessions = sessions;
        this.members = members;
        this.agenda = agenda;
        this.motions = motions;
        this.access = access;
        this.clock = clock;
        this.ledger = ledger;
        this.seating = seating;
        this.meeting = meeting;
        this.door = door;
    }

    /**
     * Calls a session of a body that the rule pack lets decide. What voters may do until the board meets runs until the
     * next session that is called.
     */
    @Transactional
    public ActResult<BoardSession> callSession(@Valid CallSession command) {
        return call(command, true);
    }

    /** A session in which an official sits down to decide at once; it ends nobody's time, for nobody was told of it. */
    @Transactional
    public ActResult<BoardSession> sitAtOnce(@Valid CallSession command) {
        return call(command, false);
    }

    private ActResult<BoardSession> call(CallSession command, boolean ahead) {
        return door.demand(Permission.DECIDE)
                .lock(() -> {
                    sessions.lockAll(command.electionId());
                    return clock.electionAsOfNow(command.electionId());
                })
                .refuse(election -> election.noSuchBody(command.body()))
                .save(election -> called(command, command.body().seats(election.election()), ahead))
                .andThen(called -> meeting.tell(command.electionId()))
                .announce(called -> new SessionChanged(called.session()))
                .record(called -> ledger.line("session_called", called.session().key(), payload(called)))
                .map(CalledSession::session);
    }

    /** A session that was called, and the seats of its body. */
    private record CalledSession(BoardSession session, DecidingBody seats) {}

    private CalledSession called(CallSession command, DecidingBody seats, boolean ahead) {
        return new CalledSession(sessions.insert(command, seats.quorum(), ahead), seats);
    }

    /** Calls a session for another time or place, as long as it is not open. */
    @Transactional
    public ActResult<BoardSession> moveSession(@Valid MoveSession command) {
        SessionKey key = command.session();
        return door.demand(Permission.DECIDE)
                .lock(() -> sessions.lockedAmongAll(key).at(command.version()))
                .refuse(SessionChecks::notYetOpened)
                .save(session -> {
                    sessions.callAgain(command);
                    return known(key);
                })
                .andThen(session -> meeting.tell(key.electionId()))
                .announce(SessionChanged::new)
                .record(session -> ledger.line(
                        "session_moved",
                        key,
                        Map.of("called_for", session.calledFor().toString())));
    }

    private static Map<String, Object> payload(CalledSession called) {
        return Map.of(
                "body", called.session().body().code(),
                "called_for", called.session().calledFor().toString(),
                "members", called.seats().members(),
                "quorum", called.seats().quorum());
    }

    @Transactional
    public ActResult<BoardSession> open(SessionKey key, int version) {
        return door.demand(Permission.DECIDE)
                .lock(() -> sessions.lock(key).at(version))
                .refuse(SessionChecks::notYetOpened)
                .save(session -> {
                    sessions.open(key, clock.now());
                    return known(key);
                })
                .announce(SessionChanged::new)
                .record(session -> ledger.line("session_opened", key, Map.of()));
    }

    /** Notes a member as present from now on; whoever it is must be a decider, and be in no other session. */
    @Transactional
    public ActResult<BoardSession> recordArrival(SessionKey key, UserName userName) {
        ActDoor.Permitted recording = door.demand(Permission.KEEP_RECORD);
        return recording
                .lock(() -> sessions.lockedAmongAll(key))
                .refuse(SessionChecks::open)
                .refuse(session -> seating.mayRecord(key, recording.user()))
                .refuse(session -> seating.refusal(session, userName))
                .save(session -> {
                    members.arrive(key, userName, clock.now());
                    return session;
                })
                .record(session -> ledger.line("member_arrived", key, member(userName)));
    }

    @Transactional
    public ActResult<BoardSession> recordDeparture(SessionKey key, UserName userName) {
        ActDoor.Permitted recording = door.demand(Permission.KEEP_RECORD);
        return recording
                .lock(() -> sessions.lock(key))
                .refuse(SessionChecks::open)
                .refuse(session -> seating.mayRecord(key, recording.user()))
                .refuse(session -> SessionChecks.present(members.present(key), userName))
                .save(session -> {
                    members.leave(key, userName, clock.now());
                    return session;
                })
                .record(session -> ledger.line("member_left", key, member(userName)));
    }

    /** Notes that a member who is there is recused from one envelope for this session. */
    @Transactional
    public ActResult<BoardSession> recuse(@Valid RecordRecusal command) {
        ActDoor.Permitted recording = door.demand(Permission.KEEP_RECORD);
        SessionKey key = command.session();
        EnvelopeNumber envelope = command.envelopeNo();
        return recording
                .lock(() -> sessions.lock(key))
                .refuse(SessionChecks::open)
                .refuse(session -> seating.mayRecord(key, recording.user()))
                .refuse(session -> SessionChecks.present(members.present(key), command.userName()))
                .refuse(session -> SessionChecks.onAgenda(agenda.find(key, envelope), envelope))
                .refuse(session -> recusedBefore(command))
                .save(session -> {
                    members.recuse(command, clock.now());
                    return session;
                })
                .record(session -> ledger.line("member_recused", key, envelope.value(), recused(command)));
    }

    private Map<String, Object> recused(RecordRecusal command) {
        return Map.of(
                "member", ledger.pseudonym(command.userName()),
                "ground", ledger.hash(command.session(), command.envelopeNo(), command.ground()));
    }

    private Optional<Refusal> recusedBefore(RecordRecusal command) {
        boolean before = members.recused(command.session())
                .getOrDefault(command.userName(), Set.of())
                .contains(command.envelopeNo());
        return before
                ? Optional.of(Refusal.naming(
                        Why.NOT_IN_THIS_STATE,
                        Set.of(command.userName()),
                        "{who} is recused from " + command.envelopeNo() + " already."))
                : Optional.empty();
    }

    /** Ends a session; whoever is still there leaves with it. */
    @Transactional
    public ActResult<BoardSession> close(SessionKey key, int version) {
        return door.demand(Permission.DECIDE)
                .lock(() -> sessions.lockedAmongAll(key).at(version))
                .refuse(SessionChecks::open)
                .refuse(session -> SessionChecks.nothingPending(motions.pending(key)))
                .save(session -> {
                    members.allLeave(key, clock.now());
                    sessions.close(key, clock.now());
                    return known(key);
                })
                .andThen(session -> meeting.tell(key.electionId()))
                .announce(SessionChanged::new)
                .record(session -> ledger.line("session_closed", key, Map.of()));
    }

    /**
     * Reopens a session that was closed by mistake, with the reason, until the election is closed. Everybody left when it
     * was closed: who is there is recorded again. Whether a meeting may go on after it was adjourned is local law's to
     * say.
     */
    @Transactional
    public ActResult<BoardSession> reopen(SessionKey key, int version, String because) {
        ActDoor.Permitted member = door.demand(Permission.DECIDE);
        return member.lock(() -> sessions.lockedAmongAll(key).at(version))
                .refuse(session -> clock.closed(key.electionId()))
                .refuse(SessionChecks::closed)
                .refuse(session -> because.isBlank()
                        ? Optional.of(Refusal.at("because", Why.NO_REASON, "Required. Enter the reason."))
                        : Optional.empty())
                .refuse(session -> SessionChecks.onNoOtherAgenda(agenda.onAnother(session)))
                .save(session -> {
                    sessions.reopen(session, because, member.user().userName(), clock.now());
                    return known(key);
                })
                .andThen(session -> meeting.tell(key.electionId()))
                .announce(SessionChanged::new)
                .record(session -> ledger.line("session_reopened", key, Map.of("because", Sha256.of(because))));
    }

    /** Every session of an election in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<BoardSession> sessions(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return sessions.all(electionId);
    }

    /** Whether voters of this election have time until its decider meets, so that a meeting has to be called ahead. */
    @Transactional(readOnly = true)
    public boolean deadlinesRunToTheMeeting(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return clock.electionAsOfNow(electionId).book().needsTheMeeting();
    }

    /** One session; {@link IllegalArgumentException} where there is none. */
    @Transactional(readOnly = true)
    public BoardSession session(SessionKey key) {
        access.demand(Permission.READ_FIGURES);
        return known(key);
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

    private BoardSession known(SessionKey key) {
        return sessions.find(key).orElseThrow(() -> SessionStore.unknown(key));
    }

    private Map<String, Object> member(UserName userName) {
        return Map.of("member", ledger.pseudonym(userName));
    }
}
