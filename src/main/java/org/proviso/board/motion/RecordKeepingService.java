package org.proviso.board.motion;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.MoveMotion;
import org.proviso.board.SessionChecks;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionStore;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * The record of a session as a secretary keeps it, who has no vote: motions and seconds as members say them aloud.
 * Attendance and votes are recorded where members record them; calling, opening and closing a session and closing a vote
 * stay with the members. The minutes and the ledger say who recorded what. Thread-safe.
 */
@Service
@Validated
public class RecordKeepingService {

    private final SessionStore sessions;
    private final MemberStore members;
    private final MotionStore motions;
    private final MotionService moving;
    private final MotionChecks checks;
    private final BoardClock clock;
    private final BoardLedger ledger;
    private final ActDoor door;

    RecordKeepingService(
            SessionStore sessions,
            MemberStore members,
            MotionStore motions,
            MotionService moving,
            MotionChecks checks,
            BoardClock clock,
            BoardLedger ledger,
            ActDoor door) {
        this.sessions = sessions;
        this.members = members;
        this.motions = motions;
        this.moving = moving;
        this.checks = checks;
        this.clock = clock;
        this.ledger = ledger;
        this.door = door;
    }

    /** Takes the record of a session that is not closed; whoever sat in it cannot, and does not sit in it from then on. */
    @Transactional
    public ActResult<BoardSession> keepRecord(SessionKey key) {
        ActDoor.Permitted secretary = door.demand(Permission.KEEP_RECORD);
        OfficeUser user = secretary.user();
        return secretary
                .lock(() -> sessions.lock(key))
                .refuse(session -> clock.closed(key.electionId()))
                .refuse(SessionChecks::notClosed)
                .refuse(session -> noSecretary(user))
                .refuse(session -> sat(key, user.userName()))
                .refuse(session -> Refusal.when(
                        members.keeps(key, user.userName()),
                        Why.NOT_IN_THIS_STATE,
                        "You keep the record of this session already."))
                .save(session -> {
                    members.keep(key, user.userName(), clock.now());
                    return session;
                })
                .record(session -> ledger.line("record_kept", key, Map.of()));
    }

    private static Optional<Refusal> noSecretary(OfficeUser user) {
        return Refusal.when(
                Permission.VOTE.isOpenTo(user.roles()),
                Why.NO_MEMBER,
                "You are a member of the deciding body. A secretary has no vote.");
    }

    private Optional<Refusal> sat(SessionKey key, UserName userName) {
        return Refusal.when(
                members.all(key).stream().anyMatch(member -> member.userName().equals(userName)),
                Why.ALREADY_PRESENT,
                "You sat in this session as a member. Somebody else has to keep its record.");
    }

    /** Records a motion that a member makes aloud. A case changed since it was seen is a stale edit. */
    @Transactional
    public ActResult<BoardMotion> move(@Valid MoveMotion move, UserName mover) {
        ActDoor.Permitted recording = door.demand(Permission.KEEP_RECORD);
        OfficeUser user = recording.user();
        return moving.moved(
                recording
                        .lock(() -> sessions.lock(move.session()))
                        .refuse(session -> checks.recording(session, user))
                        .refuse(session -> checks.voting(session, mover)),
                move,
                mover,
                mover.equals(user.userName()) ? null : user.userName());
    }

    /** Records that a member seconds the motion on the floor. */
    @Transactional
    public ActResult<BoardMotion> second(MotionKey key, int version, UserName seconder) {
        ActDoor.Permitted recording = door.demand(Permission.KEEP_RECORD);
        OfficeUser user = recording.user();
        return recording
                .lock(() -> {
                    sessions.lock(key.session());
                    return motion(key).at(version);
                })
                .refuse(motion -> checks.recording(sessions.lock(key.session()), user))
                .refuse(MotionChecks::pending)
                .refuse(motion -> checks.voting(sessions.lock(key.session()), seconder))
                .refuse(motion -> secondedByTheMover(motion, seconder))
                .refuse(motion -> MotionChecks.mayBeSeconded(motion, seconder))
                .refuse(motion ->
                        checks.recused(key.session(), seconder, Set.copyOf(motion.putNos()), Why.RECUSED_MEMBER_MOVED))
                .save(motion -> {
                    motions.second(key, seconder, user.userName());
                    return motion(key);
                })
                .record(motion ->
                        ledger.line("motion_seconded", key.session(), key.subject(), seconded(key, seconder)));
    }

    private static Optional<Refusal> secondedByTheMover(BoardMotion motion, UserName seconder) {
        return motion.movedBy().equals(seconder)
                ? Optional.of(Refusal.naming(
                        Why.OWN_ACT, Set.of(seconder), "{who} made this motion. Another member has to second it."))
                : Optional.empty();
    }

    private Map<String, Object> seconded(MotionKey key, UserName seconder) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("motion", key.motionNo());
        payload.put("seconded_by", ledger.pseudonym(seconder));
        return payload;
    }

    private BoardMotion motion(MotionKey key) {
        return motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."));
    }
}
