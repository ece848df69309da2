package org.proviso.board.motion;

import jakarta.validation.Valid;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MotionEnvelope;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.MoveMotion;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionStore;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.Vote;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Motions and votes of a session, one motion at a time: moved, seconded where the body wants it, put to the vote, voted
 * on, closed. Whoever notes something must sit in the session or keep its record; the record says who did. Thread-safe.
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
    private final ActDoor door;

    MotionService(
            SessionStore sessions,
            MotionStore motions,
            VoteStore votes,
            MotionChecks checks,
            ProposalsForDecision proposals,
            VoteClosing closing,
            AccessService access,
            BoardClock clock,
            BoardLedger ledger,
            ActDoor door) {
        this.sessions = sessions;
        this.motions = motions;
        this.votes = votes;
        this.checks = checks;
        this.proposals = proposals;
        this.closing = closing;
        this.access = access;
        this.clock = clock;
        this.ledger = ledger;
        this.door = door;
    }

    /** Moves something; the mover is whoever is signed in. A case changed since it was seen is a stale edit. */
    @Transactional
    public ActResult<BoardMotion> move(@Valid MoveMotion move) {
        ActDoor.Permitted mover = door.demand(Permission.DECIDE);
        return moved(
                mover.lock(() -> sessions.lock(move.session())),
                move,
                mover.user().userName(),
                null);
    }

    /** The same for a mover whose motion somebody else recorded (null: the mover did). */
    ActResult<BoardMotion> moved(
            ActDoor.Locked<BoardSession> locked, MoveMotion move, UserName mover, @Nullable UserName recordedBy) {
        Map<EnvelopeNumber, CountAgainstRules> against = new LinkedHashMap<>();
        return locked.refuse(session -> checks.move(session, move, mover))
                .refuseAll(session -> {
                    against.putAll(checks.against(move));
                    return MotionChecks.groundsAgainst(move, against);
                })
                .save(session -> motion(motions.insert(move, against, mover, recordedBy, clock.now())))
                .record(moved -> ledger.line(
                        "motion_moved", moved.key().session(), moved.key().subject(), moved(moved)));
    }

    private Map<String, Object> moved(BoardMotion motion) {
        Map<String, Object> what = new LinkedHashMap<>();
        what.put("motion", motion.key().motionNo());
        what.put("outcome", motion.kind().code());
        what.put("envelopes", motion.putNos());
        what.put("contests", motion.contests().stream().sorted().toList());
        what.put("reasons", motion.reasons().stream().map(Code::code).toList());
        what.put("reference", motion.legalReference());
        if (!motion.against().isEmpty()) {
            what.put(
                    "against_rules",
                    motion.against().stream().map(MotionService::against).toList());
        }
        if (motion.recordedBy() != null) {
            what.put("moved_by", ledger.pseudonym(motion.movedBy()));
        }
        if (!motion.because().isBlank()) {
            what.put("because", ledger.hashes(motion.key().session(), motion.putNos(), motion.because()));
        }
        return what;
    }

    private static Map<String, Object> against(MotionEnvelope motionEnvelope) {
        CountAgainstRules rules = motionEnvelope.against().orElseThrow();
        return Map.of(
                "envelope", motionEnvelope.envelopeNo(),
                "rules_say", rules.rulesSay().code(),
                "known_to_have_voted", rules.knownToHaveVoted());
    }

    /** A session that is held, and a motion before it. */
    private record HeldMotion(BoardSession session, BoardMotion motion) {}

    private HeldMotion held(MotionKey key) {
        return new HeldMotion(sessions.lock(key.session()), motion(key));
    }

    private ActDoor.Locked<HeldMotion> held(ActDoor.Permitted member, MotionKey key, int version) {
        return member.lock(() ->
                        new HeldMotion(sessions.lock(key.session()), motion(key).at(version)))
                .refuse(held -> checks.recording(held.session(), member.user()))
                .refuse(held -> MotionChecks.pending(held.motion()));
    }

    /** Another member seconds it; small bodies need no second, so nothing waits for one (common practice). */
    @Transactional
    public ActResult<BoardMotion> second(MotionKey key, int version) {
        ActDoor.Permitted member = door.demand(Permission.DECIDE);
        UserName userName = member.user().userName();
        return held(member, key, version)
                .refuse(held -> MotionChecks.mayBeSeconded(held.motion(), userName))
                .refuse(held -> checks.recused(
                        key.session(), userName, Set.copyOf(held.motion().putNos()), Why.RECUSED_MEMBER_MOVED))
                .save(held -> {
                    motions.second(key, userName);
                    return motion(key);
                })
                .record(motion -> line("motion_seconded", key));
    }

    /** Puts it to the vote. */
    @Transactional
    public ActResult<BoardMotion> putToVote(MotionKey key, int version) {
        return held(door.demand(Permission.KEEP_RECORD), key, version)
                .refuse(held -> Refusal.when(
                        held.motion().putAt() != null,
                        Why.NOT_IN_THIS_STATE,
                        "The vote on this motion is open already."))
                .save(held -> {
                    motions.put(key, clock.now());
                    return motion(key);
                })
                .record(motion -> line("motion_put", key));
    }

    /** Takes a motion off before its vote is closed; the votes noted on it settle nothing. */
    @Transactional
    public ActResult<BoardMotion> withdraw(MotionKey key, int version) {
        return held(door.demand(Permission.KEEP_RECORD), key, version)
                .save(held -> {
                    motions.end(key, MotionResult.WITHDRAWN, clock.now(), "The motion was withdrawn.");
                    return motion(key);
                })
                .record(motion -> line("motion_withdrawn", key));
    }

    /** Notes a member's vote; the ledger has the votes once the vote is closed. */
    @Transactional
    public ActResult<BoardMotion> vote(@Valid CastVote cast) {
        ActDoor.Permitted noting = door.demand(Permission.KEEP_RECORD);
        MotionKey key = cast.motion();
        return noting.lock(() -> held(key))
                .refuse(held -> votable(held, noting.user()))
                .refuse(held -> checks.voting(held.session(), cast.userName()))
                .refuse(held ->
                        cast.vote() == Vote.RECUSED ? Optional.empty() : recused(held.motion(), cast.userName()))
                .save(held -> {
                    votes.note(key, cast.userName(), cast.vote(), noting.user().userName(), clock.now());
                    motions.touch(key);
                    return motion(key);
                })
                .withoutEntry();
    }

    private Optional<Refusal> recused(BoardMotion motion, UserName userName) {
        return checks.recused(motion.key().session(), userName, Set.copyOf(motion.putNos()), Why.RECUSED_MEMBER_VOTED);
    }

    /** Takes a member's vote back, for one who left or is recused after all. */
    @Transactional
    public ActResult<BoardMotion> withdrawVote(MotionKey key, UserName userName) {
        ActDoor.Permitted noting = door.demand(Permission.KEEP_RECORD);
        return noting.lock(() -> held(key))
                .refuse(held -> votable(held, noting.user()))
                .save(held -> {
                    if (votes.takeBack(key, userName)) {
                        motions.touch(key);
                    }
                    return motion(key);
                })
                .withoutEntry();
    }

    private Optional<Refusal> votable(HeldMotion held, OfficeUser noting) {
        return checks.recording(held.session(), noting).or(() -> MotionChecks.put(held.motion()));
    }

    /**
     * Closes the vote: what it means by the rule pack is recorded, and what it settles takes effect at once, all of it
     * or nothing. Where the vote does not stand, or a decision is not legal, nothing is written and the votes stay. The
     * version is that of the motion with the votes as they were seen.
     */
    @Transactional
    public ActResult<VoteClosed> close(MotionKey key, int version) {
        return closing.close(key, version);
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
        Set<UserName> hands = new LinkedHashSet<>(Set.of(proposed.proposedBy()));
        Optional.ofNullable(proposed.secondReadBy()).ifPresent(hands::add);
        return hands;
    }

    private LedgerLine line(String act, MotionKey key) {
        return ledger.line(act, key.session(), key.subject(), Map.of("motion", key.motionNo()));
    }

    private BoardMotion motion(MotionKey key) {
        return motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."));
    }
}
