package org.proviso.board.motion;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.board.BoardActResult;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.MoveMotion;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionChecks;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionStore;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.Vote;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Motions and votes of a session, one motion at a time: moved, seconded where the body wants it, put to the vote, voted
 * on, closed. Whoever notes something must sit in the session; the record says who did. Thread-safe.
 */
@Service
@Validated
public class MotionService {

    private final SessionStore sessions;
    private final MotionStore motions;
    private final VoteStore votes;
    private final MotionChecks checks;
    private final ProposalsForDecision proposals;
    private final VoteClosing closing;
    private final AccessService access;
    private final BoardClock clock;
    private final BoardLedger ledger;

    MotionService(
            SessionStore sessions,
            MotionStore motions,
            VoteStore votes,
            MotionChecks checks,
            ProposalsForDecision proposals,
            VoteClosing closing,
            AccessService access,
            BoardClock clock,
            BoardLedger ledger) {
        this.sessions = sessions;
        this.motions = motions;
        this.votes = votes;
        this.checks = checks;
        this.proposals = proposals;
        this.closing = closing;
        this.access = access;
        this.clock = clock;
        this.ledger = ledger;
    }

    /** Moves something; the mover is whoever is signed in. A case changed since it was seen is a stale edit. */
    @Transactional
    public BoardActResult<BoardMotion> move(@Valid MoveMotion move) {
        OfficeUser mover = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(move.session());
        return BoardActResult.unless(checks.move(session, move, mover.userName()), () -> {
            MotionKey key = motions.insert(move, mover.userName(), clock.now());
            BoardMotion moved = motion(key);
            ledger.record(mover, "motion_moved", key.session(), key.subject(), moved(moved));
            return moved;
        });
    }

    private Map<String, Object> moved(BoardMotion motion) {
        Map<String, Object> what = new LinkedHashMap<>();
        what.put("motion", motion.key().motionNo());
        what.put("outcome", motion.kind().code());
        what.put("envelopes", motion.putNos());
        what.put("contests", motion.contests().stream().sorted().toList());
        what.put("reasons", motion.reasons().stream().map(Code::code).toList());
        what.put("reference", motion.legalReference());
        if (!motion.because().isBlank()) {
            what.put("because", ledger.hashes(motion.key().session(), motion.putNos(), motion.because()));
        }
        return what;
    }

    /** Another member seconds it; small bodies need no second, so nothing waits for one (common practice). */
    @Transactional
    public BoardActResult<BoardMotion> second(MotionKey key, int version) {
        OfficeUser member = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motion(key).at(version);
        Optional<Refusal> refusal = checks.sitting(session, member.userName())
                .or(() -> MotionChecks.pending(motion))
                .or(() -> SessionChecks.refuse(
                        motion.movedBy().equals(member.userName()) || motion.secondedBy() != null,
                        Why.OWN_ACT,
                        "Another member has to second it, and once."))
                .or(() -> checks.recused(
                        key.session(), member.userName(), Set.copyOf(motion.putNos()), Why.RECUSED_MEMBER_MOVED));
        return BoardActResult.unless(refusal, () -> {
            motions.second(key, member.userName());
            return recorded(member, "motion_seconded", key);
        });
    }

    /** Puts it to the vote. */
    @Transactional
    public BoardActResult<BoardMotion> putToVote(MotionKey key, int version) {
        OfficeUser member = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motion(key).at(version);
        Optional<Refusal> refusal = checks.sitting(session, member.userName())
                .or(() -> MotionChecks.pending(motion))
                .or(() -> SessionChecks.refuse(
                        motion.putAt() != null, Why.NOT_IN_THIS_STATE, "It was put to the vote already."));
        return BoardActResult.unless(refusal, () -> {
            motions.put(key, clock.now());
            return recorded(member, "motion_put", key);
        });
    }

    /** Takes a motion off before its vote is closed; the votes noted on it settle nothing. */
    @Transactional
    public BoardActResult<BoardMotion> withdraw(MotionKey key, int version) {
        OfficeUser member = access.demand(Permission.DECIDE);
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motion(key).at(version);
        Optional<Refusal> refusal = checks.sitting(session, member.userName()).or(() -> MotionChecks.pending(motion));
        return BoardActResult.unless(refusal, () -> {
            motions.end(key, MotionResult.WITHDRAWN, clock.now(), "The motion was withdrawn.");
            return recorded(member, "motion_withdrawn", key);
        });
    }

    /** Notes a member's vote. */
    @Transactional
    public BoardActResult<BoardMotion> vote(@Valid CastVote cast) {
        OfficeUser noting = access.demand(Permission.VOTE);
        MotionKey key = cast.motion();
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motion(key);
        Optional<Refusal> refusal = votable(session, motion, noting)
                .or(() -> checks.sitting(session, cast.userName()))
                .or(() -> cast.vote() == Vote.RECUSED
                        ? Optional.empty()
                        : checks.recused(
                                key.session(), cast.userName(), Set.copyOf(motion.putNos()), Why.RECUSED_MEMBER_VOTED));
        return BoardActResult.unless(refusal, () -> {
            votes.note(key, cast.userName(), cast.vote(), noting.userName(), clock.now());
            motions.touch(key);
            return motion(key);
        });
    }

    /** Takes a member's vote back, for one who left or stands aside after all. */
    @Transactional
    public BoardActResult<BoardMotion> withdrawVote(MotionKey key, UserName userName) {
        OfficeUser noting = access.demand(Permission.VOTE);
        BoardSession session = sessions.lock(key.session());
        return BoardActResult.unless(votable(session, motion(key), noting), () -> {
            if (votes.takeBack(key, userName)) {
                motions.touch(key);
            }
            return motion(key);
        });
    }

    private Optional<Refusal> votable(BoardSession session, BoardMotion motion, OfficeUser noting) {
        return checks.sitting(session, noting.userName()).or(() -> MotionChecks.put(motion));
    }

    /**
     * Closes the vote: what it means by the rule pack is recorded, and what it settles takes effect at once, all of it
     * or nothing. Where the vote does not stand, or a decision is not legal, nothing is written and the votes stay. The
     * version is that of the motion with the votes as they were seen.
     */
    @Transactional
    public VoteClosingResult close(MotionKey key, int version) {
        return closing.close(access.demand(Permission.DECIDE), key, version);
    }

    /** The motions of a session in their order. */
    @Transactional(readOnly = true)
    public List<BoardMotion> motions(SessionKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return motions.all(key);
    }

    /** The votes noted on a motion, by user name. */
    @Transactional(readOnly = true)
    public List<BoardVote> votes(MotionKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return votes.all(key);
    }

    /**
     * Who may not vote to reject each of these: whoever proposed the rejection or read it again. A case that is not
     * proposed to be rejected is not in it.
     */
    @Transactional(readOnly = true)
    public Map<EnvelopeKey, Set<UserName>> votersBarred(Collection<EnvelopeKey> keys) {
        access.demand(Permission.SEE_WHOLE_CASE);
        Map<EnvelopeKey, Set<UserName>> barred = new LinkedHashMap<>();
        if (keys.isEmpty()) {
            return barred;
        }
        Map<EnvelopeNumber, ProposalForDecision> found = proposals.find(
                keys.iterator().next().electionId(),
                keys.stream().map(EnvelopeKey::envelopeNo).toList());
        for (EnvelopeKey key : keys) {
            Optional.ofNullable(found.get(key.envelopeNo()))
                    .filter(proposed -> proposed.outcome() == DecisionOutcome.REJECT)
                    .ifPresent(proposed -> barred.put(key, hands(proposed)));
        }
        return barred;
    }

    private static Set<UserName> hands(ProposalForDecision proposed) {
        List<UserName> hands = new ArrayList<>(List.of(proposed.proposedBy()));
        if (proposed.secondReadBy() != null) {
            hands.add(proposed.secondReadBy());
        }
        return new LinkedHashSet<>(hands);
    }

    private BoardMotion recorded(OfficeUser by, String act, MotionKey key) {
        ledger.record(by, act, key.session(), key.subject(), Map.of("motion", key.motionNo()));
        return motion(key);
    }

    private BoardMotion motion(MotionKey key) {
        return motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."));
    }
}
